using Headroom.Documents.Canvas;
using Headroom.Documents.Layout;
using Headroom.Domain.Ledgers;
using Headroom.Domain.Shown;
using Headroom.Engineering.Power;

namespace Headroom.Documents.Papers;

/// <summary>The record of acceptance: what every reading should be, its limit, and a blank for what is read.</summary>
internal static class AcceptanceRecord
{
    private const double Hand = 52;

    /// <summary>What stands on it; null when there is nothing to measure.</summary>
    public static IReadOnlyList<Block>? Blocks(PaperInput input)
    {
        List<Block> measured = [.. Copper(input), .. Fibre(input), .. Volts(input), .. Rooms(input), .. PowerCut(input)];
        return measured.Count == 0 ? null :
        [
            new Facts([("limit, with edition", ""), ("permanent link or channel", ""), ("tester, serial number", ""), ("calibrated until", ""), ("adapters, their age", ""), ("operator", "")]),
            .. measured,
            new Heading("Deviations"),
            new Table([new("where") { Least = 90 }, new("what, and what was agreed about it") { Grows = true }, new("by, date") { Least = 100 }], [.. Written.Blank(4)]),
            new Heading("Accepted"),
            Written.Signed("for the firm", "for the client"),
        ];
    }

    private static IEnumerable<Block> Copper(PaperInput input)
    {
        if (input.Results.Cabling.Runs.Count == 0)
            yield break;
        var metres = input.Units.Of("m").Symbol;
        yield return new Heading("Copper links");
        yield return new Table(
            [
                new("cable"), new("from"), new("to"), new($"length [{metres}]", Anchor.End), new($"most [{metres}]", Anchor.End), new("loop [Ω]", Anchor.End),
                new($"read length [{metres}]") { Least = Hand }, new("read loop [Ω]") { Least = Hand }, new("worst margin [dB] at [MHz]") { Least = 70, Grows = true }, new("result") { Least = Hand }, new("date, initials") { Least = 62 },
            ],
            [.. input.Results.Cabling.Runs.Select(run => Written.ToFill(
                run.Id,
                run.Run.Drop.From,
                run.Run.Drop.To ?? "",
                run.Unknown > 0 ? "?" : Written.Metres(input, run.LinkMetres),
                run.LongestLinkMetres is { } longest ? Written.Metres(input, longest) : "",
                run.Unknown > 0 ? "?" : Written.Figure(run.LinkLoopOhms)))]);
        yield return new Words("Length and loop are those of the link without its cords, the loop at the warmest the route gets; it reads less when it is colder. 'Most' is the longest the link may be there.", Lettering.Label);
    }

    private static IEnumerable<Block> Fibre(PaperInput input)
    {
        var links = input.Results.Cabling.Links.Where(link => !link.IsCopper && link.Run is not null).ToList();
        if (links.Count == 0)
            yield break;
        var metres = input.Units.Of("m").Symbol;
        yield return new Heading("Fibre links");
        yield return new Table(
            [
                new("link") { Grows = true }, new("cable"), new($"length [{metres}]", Anchor.End), new("mated pairs, splices"), new("loss [dB]", Anchor.End), new("most [dB]", Anchor.End),
                new("wavelength [nm]") { Least = Hand }, new("read from the closet [dB]") { Least = 70 }, new("read to the closet [dB]") { Least = 70 }, new("reference, cords") { Least = 70 }, new("date, initials") { Least = 62 },
            ],
            [.. links.Select(link => Written.ToFill(
                $"{link.Uplink.From} to {link.Uplink.To}", link.Run!.Drop.Id, Written.Metres(input, link.Metres), $"{link.MatedPairs}, {link.Splices}", Written.Figure(link.Decibels), Written.Figure(link.MostDecibels)))]);
    }

    private static IEnumerable<Block> Volts(PaperInput input)
    {
        var ports = input.Results.Power.Ports;
        if (ports.Count == 0)
            yield break;
        yield return new Heading("Power at the devices");
        yield return new Table(
            [
                new("device"), new("port"), new("cable"), new("volts, ordinary [V]", Anchor.End), new("volts, at its most [V]", Anchor.End), new("least [V]", Anchor.End), new("watts at the port, ordinary [W]", Anchor.End),
                new("most given [W]", Anchor.End), new("read [V]") { Least = Hand }, new("read [W]") { Least = Hand }, new("meter, while") { Least = 70, Grows = true }, new("date, initials") { Least = 62 },
            ],
            [.. ports.Select(port => Written.ToFill(
                port.Id,
                port.Port.Ref.ToString(),
                port.Endpoint.Endpoint.Drop ?? "",
                Written.Figure(port.In(PowerState.Typical).Point?.LoadVolts),
                Written.Figure(port.In(port.Worst).Point?.LoadVolts),
                Written.Figure(port.LeastVolts),
                Written.Figure(port.In(PowerState.Typical).PortWatts),
                Written.Figure(port.GrantWatts)))]);
    }

    private static IEnumerable<Block> Rooms(PaperInput input)
    {
        var entries = input.Entries(inside: false).Where(entry => entry.Kind is "sound" or "temperature").OrderBy(entry => entry.Kind, StringComparer.Ordinal).ThenBy(entry => entry.Subject, StringComparer.Ordinal).ToList();
        if (entries.Count == 0)
            yield break;
        yield return new Heading("Sound and warmth, after an hour of work");
        yield return new Table(
            [new("where"), new("what") { Grows = true }, new("expected", Anchor.End), new("limit", Anchor.End), new("unit"), new("read") { Least = Hand }, new("meter, while") { Least = 90 }, new("date, initials") { Least = 62 }],
            [.. entries.Select(entry => Room(input, entry))]);
    }

    private static Row Room(PaperInput input, LedgerEntry entry)
    {
        var unit = input.Units.Of(entry.Unit);
        var figures = Numbers.Together([unit.Value(entry.Demand), unit.Value(entry.Limit)]);
        return Written.ToFill(entry.Subject, entry.What, figures[0].Length > 0 ? figures[0] : "?", figures[1].Length > 0 ? figures[1] : "?", unit.Symbol);
    }

    private static IEnumerable<Block> PowerCut(PaperInput input)
    {
        var standby = input.Results.Standby;
        if (standby.Supplies.Count == 0)
            yield break;
        yield return new Heading("Power cut, with everything connected");
        var rows = standby.Supplies.Select(supply => Written.ToFill(
            $"mains of {supply.Placed.Id} off: it holds [min]",
            supply.Governing?.Seconds is { } seconds ? $"{Numbers.Show(Math.Floor(seconds / 60))} with aged and cold batteries" : "?",
            supply.Wanted is { } wanted ? $"at least {wanted.Written}" : "none said")).ToList();
        rows.AddRange(standby.Kept.Select(kept => Written.ToFill($"{kept.Name} works through the cut", "yes", "must")));
        rows.Add(Written.ToFill("mains on: everything works again [min]", "", input.Job.Policy.Outage.BackWithin is { } back ? $"within {back.Written}" : "none said"));
        yield return new Table([new("test") { Grows = true }, new("expected"), new("limit"), new("read") { Least = 70 }, new("time, initials") { Least = 80 }], rows);
        yield return new Words("Tell everybody in the house before the mains goes off, and note the time of each step. Stop at a third of the charge: the rest is for the night.", Lettering.Label);
    }
}
