using Headroom.Domain.Jobs;

namespace Headroom.Engineering.Cabling;

/// <summary>A pathway with the cables that take it.</summary>
public sealed record PathwayUse
{
    /// <summary>The pathway as surveyed.</summary>
    public required Pathway Pathway { get; init; }

    /// <summary>The cables of the job in it, one for each drop that takes it.</summary>
    public required IReadOnlyList<PathwayCable> Cables { get; init; }

    /// <summary>Cross-section inside [mm²]; null when not surveyed.</summary>
    public required double? InsideSquareMillimetres { get; init; }

    /// <summary>Cross-section of all cables of which it is known, those that lie there already included [mm²].</summary>
    public required double FilledSquareMillimetres { get; init; }

    /// <summary>Cables counted, those that lie there already included.</summary>
    public required int Count { get; init; }

    /// <summary>Cables of the job whose thickness nobody knows.</summary>
    public required IReadOnlyList<PathwayCable> NotMeasured { get; init; }

    /// <summary>Most fill [1].</summary>
    public required double MostShare { get; init; }

    /// <summary>Part that the known cables fill [1]; null when the inside is not surveyed.</summary>
    public double? Share => FilledSquareMillimetres / InsideSquareMillimetres;

    /// <summary>True for a conduit.</summary>
    public bool IsConduit => Pathway.Kind == "conduit";

    /// <summary>True when it has walls all around or at the sides, so that it can be full.</summary>
    public bool CanBeFull => Pathway.Kind != "ceiling";

    /// <summary>True when somebody looked at what lies there already.</summary>
    public bool AlreadyKnown => Pathway.Already is not null;

    /// <summary>The thickest cable of the job in it [mm]; null when none is known.</summary>
    public double? ThickestMillimetres
    {
        get
        {
            double? thickest = null;
            foreach (var cable in Cables)
            {
                if (cable.Millimetres is { } d && !(d <= thickest))
                    thickest = d;
            }

            return thickest;
        }
    }

    /// <summary>The most fill that so many cables may have here [1].</summary>
    /// <param name="cables">How many cables; 1 or more.</param>
    /// <returns>Share [1].</returns>
    public double MostShareOf(int cables) => !IsConduit ? ConduitFill.TrayShare
        : Pathway.LongestPull is { } pull && pull.Value.Value <= ConduitFill.NippleMetres ? ConduitFill.NippleShare
        : ConduitFill.MostShare(cables);
}
