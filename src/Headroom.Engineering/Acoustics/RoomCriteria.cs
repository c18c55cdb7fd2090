namespace Headroom.Engineering.Acoustics;

/// <summary>Recommended levels by kind of room, for a listener of whom nobody asked a limit. Design targets, no law.</summary>
public static class RoomCriteria
{
    private const string Bs8233 = "BS 8233:2014, design range, second-hand";

    /// <summary>The criterion of a kind of room as surveys name it.</summary>
    /// <param name="kind">The kind; null when not written.</param>
    /// <returns>The criterion, or null for kinds of which none is known, such as a store or a yard.</returns>
    public static RoomCriterion? Of(string? kind) => kind switch
    {
        "private office" => new(kind, 35, 40, Bs8233),
        "meeting room" => new(kind, 35, 45, Bs8233),
        "open office" => new(kind, 45, 50, Bs8233),
        "classroom" => new(kind, null, 35, "ANSI/ASA S12.60, from memory"),
        "treatment room" => new(kind, null, 40, "HTM 08-01, from memory, unconfirmed"),
        "reception" or "shop" => new(kind, 42, 47, "recommended NC 35 to 40, second-hand"),
        "home" => new(kind, null, 35, "BS 8233:2014, living room by day, second-hand"),
        _ => null,
    };

    /// <summary>Every kind of which a criterion is known.</summary>
    public static IReadOnlyList<string> Kinds { get; } = ["private office", "meeting room", "open office", "classroom", "treatment room", "reception", "shop", "home"];
}
