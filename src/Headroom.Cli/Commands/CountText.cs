using Headroom.Domain.Jobs;
using Headroom.Engineering;

namespace Headroom.Cli.Commands;

/// <summary>Reads how watts are to be counted: <c>class</c> for all switches, <c>sw-1=class</c> for one.</summary>
internal static class CountText
{
    private static readonly Dictionary<string, ReservesBy> Known = new()
    {
        ["class"] = ReservesBy.Class,
        ["port-limit"] = ReservesBy.PortLimit,
        ["negotiated"] = ReservesBy.Negotiated,
        ["measured"] = ReservesBy.Measured,
        ["autoclass"] = ReservesBy.Autoclass,
    };

    /// <summary>The ways of counting.</summary>
    public static IReadOnlyList<string> Ways { get; } = [.. Known.Keys];

    /// <summary>What is wrong with a text; null when nothing.</summary>
    public static string? Complaint(string text)
    {
        if (Read(text) is not null)
            return null;
        return text.StartsWith('=') ? $"wants a switch before '=': sw-1{text}" : ValueOption.Complaint(Way(text), Ways);
    }

    /// <summary>Reads a text; null when it is none.</summary>
    public static CountAs? Read(string text)
    {
        var way = Way(text);
        var unit = way.Length == text.Length ? null : text[..^(way.Length + 1)];
        return unit is not "" && Known.TryGetValue(way, out var by) ? new CountAs(unit, by) : null;
    }

    private static string Way(string text) => text[(text.LastIndexOf('=') + 1)..];
}
