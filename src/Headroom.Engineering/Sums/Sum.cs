namespace Headroom.Engineering.Sums;

/// <summary>One sum of the trade by itself: what it answers, what it needs, how it is worked out. A page, a program or a person can ask it.</summary>
public sealed record Sum
{
    /// <summary>The name in plain words with hyphens, such as <c>far-end-volts</c>.</summary>
    public required string Name { get; init; }

    /// <summary>The discipline, such as <c>power</c>.</summary>
    public required string Discipline { get; init; }

    /// <summary>The question it answers, as somebody would ask it.</summary>
    public required string Answers { get; init; }

    /// <summary>What it needs, in the order in which people say it.</summary>
    public required IReadOnlyList<SumInput> Inputs { get; init; }

    /// <summary>What it may come to; the first is the one asked for.</summary>
    public required IReadOnlyList<SumOutput> Outputs { get; init; }

    /// <summary>The formula in one or a few lines.</summary>
    public required string Formula { get; init; }

    /// <summary>Where the formula is published.</summary>
    public required string Source { get; init; }

    /// <summary>Inputs that work as they stand: <c>volts 54 V length 82 m</c>.</summary>
    public required string Example { get; init; }

    /// <summary>Works it out.</summary>
    public required Func<SumGiven, SumAnswer> Work { get; init; }
}
