using Headroom.Domain.Jobs;
using Headroom.Domain.Ledgers;

namespace Headroom.Engineering.Heat;

/// <summary>Entries for the air at an inlet against what the unit is rated for.</summary>
internal static class InletEntries
{
    // Below this a place is cold enough that the lower end of a rating is worth an entry [°C].
    private const double ColdBelow = 5;

    // Up to here no rating of network equipment matters, so none is asked for [°C]: the least that is met in practice is 40.
    private const double RatingMattersFrom = 30;

    // Widest entry name of the sheet.
    private const int WhatRoom = 24;

    // Half an interval of the rise of a cupboard, as a share of it: vents and faces are as simple as they can be put (estimate).
    private const double RiseSpread = 0.3;

    /// <summary>The entry for the warmest case; null where the survey gives no reason to judge.</summary>
    public static LedgerEntry? Of(UnitHeat unit, HeatResult result, Reserve reserve)
    {
        if (unit.Worst is not { } worst)
            return unit.Question is { } question ? Entry(unit, "inlet", "air at the inlet", new InletStory(unit, result, reserve)) with { Limit = unit.Most, Question = question } : null;
        if (unit.Most is not { } most)
        {
            return worst.Inlet < RatingMattersFrom ? null : Entry(unit, "inlet", What("inlet air", worst.Name), new InletStory(unit, result, reserve)) with
            {
                Demand = worst.Inlet,
                Question = $"for how warm an air is {unit.Unit.Body.Id} rated? its data sheet says",
            };
        }

        var verdict = Judge.Known(worst.Inlet, most, reserve.Of(most));
        var bad = verdict is Verdict.Short or Verdict.Tight;
        return Entry(unit, "inlet", What("inlet air", worst.Name), new InletStory(unit, result, reserve)) with
        {
            Demand = worst.Inlet,
            Peak = worst.MostInlet > worst.Inlet + 0.05 ? worst.MostInlet : null,
            Limit = most,
            Reserve = reserve.Of(most),
            Studied = verdict,
            PlusMinus = Interval(unit, worst),
            Assumed = HeatAssumed.Of(unit, result),
            Beside = new LateList<BesideRow>(() => Beside(unit, most)),
            Advice = bad ? new LateList<string>(() => HeatAdvice.Of(unit, result, most - reserve.Of(most))) : [],
            Cautions = Cautions(unit, bad),
        };
    }

    /// <summary>The entry for the coldest case; null where it is not cold or no lower rating is known.</summary>
    public static LedgerEntry? Cold(UnitHeat unit, Reserve reserve)
    {
        if (unit.Coldest is not { } coldest || unit.Unit.Body.LeastAmbient?.Value.Value is not { } least || coldest.Inlet >= ColdBelow)
            return null;
        // A reserve given as a share is of the limit, and a share of 0 °C means nothing: only an amount counts here.
        var kept = reserve.Amount ?? 0;
        return Entry(unit, "cold", What("cold air", coldest.Name), new ColdStory(unit, coldest)) with
        {
            Sense = Sense.AtLeast,
            Demand = least,
            Limit = coldest.Inlet,
            Reserve = kept,
            Studied = Judge.Known(least, coldest.Inlet, kept),
        };
    }

    /// <summary>The name of an entry and its case, as far as the sheet has room.</summary>
    public static string What(string of, string name) => name.Length > 0 && of.Length + 2 + name.Length <= WhatRoom ? $"{of}, {name}" : of;

    private static LedgerEntry Entry(UnitHeat unit, string quantity, string what, IEntryStory story) => new()
    {
        Discipline = HeatLedger.Discipline,
        Subject = unit.Unit.Id,
        Quantity = quantity,
        What = what,
        Unit = "°C",
        Kind = "temperature",
        Studied = Verdict.Unknown,
        Story = story,
    };

    private static double? Interval(UnitHeat unit, UnitCase worst)
    {
        var air = unit.Place?.In(worst.Name);
        var worked = (air is { WorkedCounts: true, Rise: { } rise } ? rise : 0) + (worst.Celsius - (air?.Celsius ?? worst.Celsius)) + worst.Fan.Returned;
        return worked > 0.05 ? RiseSpread * worked : null;
    }

    private static List<BesideRow> Beside(UnitHeat unit, double most)
    {
        var rows = new List<BesideRow>();
        foreach (var one in unit.Cases)
        {
            if (!ReferenceEquals(one, unit.Worst))
                rows.Add(new("case", one.Name, one.Inlet, most, Note(one)));
        }

        foreach (var one in unit.Place?.Cases ?? [])
        {
            if (one is { Worked: { } worked, WrittenCelsius: { } written })
                rows.Add(new("air", $"{one.Name}, {(one.WorkedCounts ? "as written" : "as worked out")} for {unit.Place!.Space.Id}", one.WorkedCounts ? written : worked, most, "the higher of both counts"));
        }

        return rows;
    }

    private static string Note(UnitCase one) => one.Fan.Level == 0 ? "" : one.Fan.Settles ? $"fan level {one.Fan.Level}" : $"fans do not settle, up to level {one.Fan.Level}";

    private static List<Caution> Cautions(UnitHeat unit, bool bad)
    {
        var cautions = new List<Caution>(2);
        if (unit.Stacked is not null)
            cautions.Add(CautionTable.HotStack);
        if (bad && unit.Place?.Box is not null)
            cautions.Add(CautionTable.CutVents);
        return cautions;
    }
}
