using Headroom.Documents.Canvas;
using Headroom.Documents.Layout;
using Headroom.Domain.Ledgers;
using Headroom.Domain.Shown;
using Headroom.Engineering.Standby;

namespace Headroom.Documents.Papers;

/// <summary>The record of commissioning: what every unit should show once all is plugged in, and the power cut minute by minute.</summary>
internal static class CommissioningRecord
{
    private const double Hand = 70;

    // Rows of a large house would fill a book: it is read at the first and the last of a wave.
    private const int MostDevices = 40;

    /// <summary>What stands on it; null without a switch.</summary>
    public static IReadOnlyList<Block>? Blocks(PaperInput input)
    {
        if (input.Results.Bound.Switches.Count == 0)
            return null;
        return
        [
            new Facts([("site", input.Job.Name), ("design", input.Ledger.Design), ("date", ""), ("by", ""), ("meters, calibrated until", ""), ("everything plugged in since", "")]),
            .. Units(input),
            .. Limits(input),
            new Heading("By eye"),
            new Table([Written.TickColumn, new("what") { Grows = true }, new("found") { Least = 140 }, new("initials") { Least = 50 }], [.. ByEye(input).Select(what => Written.ToTick(what) with { Least = Written.HandRow })]),
            .. PowerCut(input),
            new Heading("Deviations"),
            new Table([new("where") { Least = 90 }, new("what, and what was agreed about it") { Grows = true }, new("by, date") { Least = 100 }], [.. Written.Blank(4)]),
            Written.Signed("for the firm", "for the client"),
        ];
    }

    private static IEnumerable<Block> Units(PaperInput input)
    {
        yield return new Heading("Units, in an ordinary hour");
        var (names, air) = (new DeviceNames(input), input.Units.Of("°C"));
        yield return new Table(
            [
                new("unit"), new("address"), new("from the mains [W]", Anchor.End), new("to its ports [W]", Anchor.End), new("ports with power", Anchor.End), new($"air at its inlet [{air.Symbol}]", Anchor.End), new("fan level", Anchor.End),
                new("read [W]") { Least = Hand }, new("ports lit") { Least = Hand }, new($"read [{air.Symbol}], after 24 h") { Least = Hand }, new("remark") { Least = Hand, Grows = true },
            ],
            [.. input.Results.Power.Switches.Select(power =>
            {
                var heat = input.Results.Heat.Units.FirstOrDefault(unit => unit.Unit.Id == power.Switch.Id)?.Worst;
                return Written.ToFill(
                    power.Switch.Id, names.Address(power.Switch.Id), Written.Figure(power.Supply.Typical?.MainsWatts), Written.Figure(power.Supply.TypicalPortWatts), Numbers.Show(power.Ports.Count),
                    heat is null ? "?" : $"{Numbers.Show(Math.Round(air.Value(heat.Inlet)!.Value, 1))}, {heat.Name}", heat is { Fan.Level: > 0 and var level } ? Numbers.Show(level) : "");
            })]);
    }

    // Whole units and places: single ports and links stand in the acceptance record.
    private static IEnumerable<Block> Limits(PaperInput input)
    {
        var units = PlacedUnit.Of(input).Select(unit => unit.Id).ToHashSet();
        var entries = input.Entries(inside: false).Where(entry => entry.Kind is "sound" or "uplink" || (entry.Kind is "temperature" or "power" && units.Contains(entry.Subject))).ToList();
        if (entries.Count == 0)
            yield break;
        yield return new Heading("Limits to be read");
        yield return new Table(
            [new("where"), new("what") { Grows = true }, new("its bar") { Least = 110 }, new("expected", Anchor.End), new("limit", Anchor.End), new("unit"), new("read") { Least = Hand }, new("meter, while") { Least = 80 }, new("date, initials") { Least = 62 }],
            [.. entries.Select(entry => Limit(input, entry))]);
        yield return EntryTable.Legend;
    }

    private static Row Limit(PaperInput input, LedgerEntry entry)
    {
        var unit = input.Units.Of(entry.Unit);
        var figures = Numbers.Together([unit.Value(entry.Demand), unit.Value(entry.Limit)]);
        string Or(string figure) => figure.Length > 0 ? figure : "?";
        return new Row([new(entry.Subject), new(entry.What), new("") { Draw = (canvas, box) => Drawings.EntryBar.Draw(canvas, entry, box) }, new((entry.Parts is null ? "" : "at least ") + Or(figures[0])), new(Or(figures[1])), new(unit.Symbol)]) { Least = Written.HandRow };
    }

    private static IEnumerable<string> ByEye(PaperInput input)
    {
        yield return "every link at the speed of its schedule, no errors counted in an hour";
        yield return "every device on the port of its schedule, with its name and address";
        yield return "passwords changed, settings saved and copied, clock right";
        if (input.Results.Bound.Endpoints.Any(endpoint => endpoint.Model.Kind == "camera"))
            yield return "cameras by day and by night, with their lamps on: picture, recording, watts at the port";
        if (input.Results.Bound.Endpoints.Any(endpoint => endpoint.Model.Kind == "phone"))
            yield return "a call from each telephone, one of them to the emergency number as agreed with it";
        if (input.Results.Bound.Endpoints.Any(endpoint => endpoint.Model.Kind == "access point"))
            yield return "radio heard in every room that was promised, walking with a call";
        yield return "racks bonded, fixed and closed; vents free; nothing hangs on its cable";
    }

    private static IEnumerable<Block> PowerCut(PaperInput input)
    {
        yield return new Heading("Power cut");
        yield return new Words("Caution: the mains is cut by somebody who may do it, at the breaker of this circuit and after everybody in the house was told; no plug is drawn under load. Batteries are not run down: stop at a third of the charge. Local codes decide.", Lettering.Body with { Ink = Ink.Ochre });
        List<Row> rows =
        [
            Written.ToFill("0", "mains off", ""),
            .. InOrder([.. input.Results.Standby.Supplies.SelectMany(Gone), .. input.Results.Standby.Kept.Select(Works)]),
            Row.Of("", "mains on: minutes begin anew") with { Least = Written.HandRow },
            .. InOrder([.. Back(input.Results.Standby)]),
            Written.ToFill(input.Job.Policy.Outage.BackWithin is { } within ? Minutes(within.Value.Value) : "", "everything works, nobody has touched anything", input.Job.Policy.Outage.BackWithin is { } wanted ? $"within {wanted.Written}" : "no time said"),
        ];
        yield return new Table([new("after [min]", Anchor.End), new("what") { Least = 150 }, new("expected") { Grows = true }, new("seen at [min]") { Least = Hand }, new("remark, initials") { Least = 100 }], rows);
    }

    // By their minutes; what has none stands last.
    private static IEnumerable<Row> InOrder(IReadOnlyList<Step> steps) => steps.OrderBy(step => step.Seconds ?? double.MaxValue).Select(step => Written.ToFill(step.Seconds is { } seconds ? Minutes(seconds) + (step.Known ? "" : " or later") : step.What.Contains("dark", StringComparison.Ordinal) ? "" : "?", step.What, step.Expected));

    private static IEnumerable<Step> Gone(StandbySupply supply)
    {
        yield return new(0, $"{supply.Placed.Id} takes over", $"nothing restarts: {Written.List([.. supply.Fed.Select(fed => fed.Id)])}");
        foreach (var shed in supply.Placed.Sheds ?? [])
            yield return new(shed.After.Value.Value, $"{supply.Placed.Id} switches off", $"ports of {shed.Priority.ToString().ToLowerInvariant()} priority");
        yield return new(
            supply.Wanted?.Value.Value,
            $"{supply.Placed.Id} still holds",
            supply.Governing?.Seconds is { } seconds ? $"until {Minutes(seconds)} min with aged and cold batteries" : Written.Asked(supply.Question ?? "how long does it hold"));
    }

    private static Step Works(KeptService kept) => new(
        60, $"{kept.Name} works", kept.Question is { } question ? Written.Asked(question) : kept.Missing.Count == 0 ? "yes" : $"no: {Written.List(kept.Missing)} on no battery");

    private static IEnumerable<Step> Back(StandbyResult standby)
    {
        foreach (var unit in standby.Restart.Units)
        {
            if (unit.Switch is not null)
                yield return new(unit.BootSeconds, $"{unit.Id} serves its first port", unit.BootSeconds is null ? "How long does it start? Its data sheet says, or a clock." : "");
            var ports = unit.Ports.Where(port => !port.Dark).ToList();
            foreach (var port in ports.Count <= MostDevices ? ports : [.. ports.GroupBy(port => port.Wave).SelectMany(wave => new[] { wave.First(), wave.Last() }).Distinct()])
                yield return new(port.UpSeconds, $"{port.Port.Id} is of use", $"power at {Minutes(port.OnSeconds)} min{(port.OnKnown ? "" : " or later")}") { Known = port.UpKnown };
            if (unit.Dark.Count > 0)
                yield return new(null, $"{unit.Id} leaves dark", Written.List([.. unit.Dark.Select(port => port.Port.Id)]));
        }

        if (standby.Restart.LineSeconds is { } line)
            yield return new(line, "the line is there", "");
        foreach (var kept in standby.Kept)
            yield return new(kept.BackSeconds, $"{kept.Name} works again{(kept.Dark.Count > 0 ? ", as far as it is not dark" : "")}", kept.BackSeconds is null ? kept.BackQuestion is { } open ? Written.Asked(open) : kept.Dark.Count > 0 ? "not by itself" : "not known" : kept.LastId is { } last ? $"the last is {last}" : "");
    }

    private static string Minutes(double seconds) => Numbers.Show(Math.Round(seconds / 60, 1));

    private sealed record Step(double? Seconds, string What, string Expected)
    {
        public bool Known { get; init; } = true;
    }
}
