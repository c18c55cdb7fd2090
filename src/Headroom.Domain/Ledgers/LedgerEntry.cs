using Headroom.Domain.Jobs;

namespace Headroom.Domain.Ledgers;

/// <summary>One limit of the job. Left = limit - demand everywhere: for a limit of the sense "at least" the demand is what is needed and the limit what is there.</summary>
public sealed record LedgerEntry
{
    // A site of 20 000 endpoints has 200 000 entries: a number that is not known is kept as not-a-number, in half the room of a nullable one.
    private readonly double _demand = double.NaN;
    private readonly double _peak = double.NaN;
    private readonly double _limit = double.NaN;
    private readonly double _reserve = double.NaN;
    private readonly double _plusMinus = double.NaN;

    // What most entries have nothing of is kept apart; it is never changed, only replaced, so that copies may share it.
    private readonly LedgerExtras _extras = LedgerExtras.None;

    /// <summary>The stable, readable id: <c>discipline/subject/quantity</c>, made of these three when it is first asked for.</summary>
    public string Id { get => field ??= string.Concat(Discipline, "/", Subject) + "/" + Quantity; init; }

    /// <summary>The discipline, such as <c>power</c>.</summary>
    public required string Discipline { get; init; }

    /// <summary>The thing it is about, as people call it.</summary>
    public required string Subject { get; init; }

    /// <summary>The last part of the id, such as <c>watts</c>.</summary>
    public required string Quantity { get; init; }

    /// <summary>What it is a limit of, in words: <c>watts after an outage</c>.</summary>
    public required string What { get; init; }

    /// <summary>The unit of all its numbers.</summary>
    public required string Unit { get; init; }

    /// <summary>The kind of limit, for which the policy may have a reserve (<see cref="Policy.Kinds"/>).</summary>
    public required string Kind { get; init; }

    /// <summary>Which way the limit works.</summary>
    public Sense Sense { get; init; }

    /// <summary>What is asked or needed; null when not known; the known part when <see cref="Parts"/> says so.</summary>
    public double? Demand { get => Known(_demand); init => _demand = value ?? double.NaN; }

    /// <summary>What may be asked beyond the demand, such as growth; drawn hatched, not judged; null when nothing.</summary>
    public double? Peak { get => Known(_peak); init => _peak = value ?? double.NaN; }

    /// <summary>The limit, or what is there; null when not known.</summary>
    public double? Limit { get => Known(_limit); init => _limit = value ?? double.NaN; }

    /// <summary>Where its bar begins, for units in which zero means nothing, such as dB(A) or °C; null for zero.</summary>
    public double? Floor => Story.Floor;

    /// <summary>The reserve wanted, in the entry's unit; null when the limit is not known.</summary>
    public double? Reserve { get => Known(_reserve); init => _reserve = value ?? double.NaN; }

    /// <summary>Limit - demand, before rounding; null when one is not known.</summary>
    public double? Left => Limit - Demand;

    /// <summary>What the study came to.</summary>
    public required Verdict Studied { get; init; }

    /// <summary>The verdict that counts: <see cref="Verdict.Clear"/> when overruled, else the study's.</summary>
    public Verdict Verdict => Overruled is null ? Studied : Verdict.Clear;

    /// <summary>True when it is for the firm's own eyes, such as costs and margins: papers for the client leave it out.</summary>
    public bool Inside { get => _extras.Inside; init => _extras = _extras.Inside == value ? _extras : _extras with { Inside = value }; }

    /// <summary>Half the interval of what is left; null when no input has an interval.</summary>
    public double? PlusMinus { get => Known(_plusMinus); init => _plusMinus = value ?? double.NaN; }

    /// <summary>True when the expected value is inside the limit, but its interval reaches beyond.</summary>
    public bool MayBeShort => Studied is Verdict.Clear or Verdict.Tight && PlusMinus is { } half && Left is { } left && left - half < 0;

    /// <summary>How many parts of a sum are known; null when all are.</summary>
    public KnownParts? Parts { get => _extras.Parts; init => _extras = _extras.Parts == value ? _extras : _extras with { Parts = value }; }

    /// <summary>The one question to ask on site; null when nothing is missing.</summary>
    public string? Question { get => _extras.Question; init => _extras = _extras.Question == value ? _extras : _extras with { Question = value }; }

    /// <summary>Codes of the cautions that apply.</summary>
    public IReadOnlyList<Caution> Cautions { get => _extras.Cautions; init => _extras = _extras.Cautions == value ? _extras : _extras with { Cautions = value }; }

    /// <summary>What would mend it, costless first; empty when nothing is to be mended.</summary>
    public IReadOnlyList<string> Advice { get => _extras.Advice; init => _extras = _extras.Advice == value ? _extras : _extras with { Advice = value }; }

    /// <summary>What was assumed, in words; empty when nothing.</summary>
    public IReadOnlyList<string> Assumed { get => _extras.Assumed; init => _extras = _extras.Assuming(value); }

    /// <summary>Other ways of counting or other states, shown beside it without verdict.</summary>
    public IReadOnlyList<BesideRow> Beside { get => _extras.Beside; init => _extras = _extras.Beside == value ? _extras : _extras with { Beside = value }; }

    /// <summary>What was measured of the same thing; empty when nothing.</summary>
    public IReadOnlyList<Comparison> Measured { get => _extras.Measured; init => _extras = _extras.Measured == value ? _extras : _extras with { Measured = value }; }

    /// <summary>Who set the study's verdict aside, and why; null when nobody.</summary>
    public Overruling? Overruled { get => _extras.Overruled; init => _extras = _extras.Overruled == value ? _extras : _extras with { Overruled = value }; }

    /// <summary>Tells, works out and turns around the entry on demand.</summary>
    public required IEntryStory Story { get; init; }

    private static double? Known(double value) => double.IsNaN(value) ? null : value;
}
