using Headroom.Domain.Ledgers;

namespace Headroom.Engineering.Heat;

/// <summary>How long a part of a unit lasts, by each way there is to reckon it.</summary>
/// <param name="Quantity">The last part of the id of its figure.</param>
/// <param name="What">What lasts, in words.</param>
/// <param name="Ways">Each way with the hours it comes to [h]; one at least.</param>
internal sealed record LifeRange(string Quantity, string What, IReadOnlyList<LifeWay> Ways)
{
    /// <summary>The rule.</summary>
    public required string Formula { get; init; }

    /// <summary>What it is worked out from, apart from the air.</summary>
    public required IReadOnlyList<WorkingInput> Inputs { get; init; }

    /// <summary>Where the rule comes from.</summary>
    public required string Source { get; init; }

    /// <summary>What the range does not hold.</summary>
    public string Remark { get; init; } = "from the shortest";

    /// <summary>The air that counts [°C].</summary>
    public double Celsius { get; init; }

    /// <summary>Where that air is, in words.</summary>
    public string Where { get; init; } = "at the inlet";

    /// <summary>The case it is that of.</summary>
    public string Case { get; init; } = "";

    /// <summary>The shortest of all ways [h].</summary>
    public double ShortestHours => Ways.Min(way => way.Hours);

    /// <summary>The longest [h].</summary>
    public double LongestHours => Ways.Max(way => way.Hours);
}
