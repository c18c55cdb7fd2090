using Headroom.Documents.Canvas;
using Headroom.Documents.Drawings;
using Headroom.Documents.Layout;
using Headroom.Domain.Shown;
using Headroom.Engineering.Binding;

namespace Headroom.Documents.Papers;

/// <summary>The sheet for the inside of the rack door: the ports as they are on the front, whom to call, and nothing secret. One sheet a rack or cupboard.</summary>
internal static class DoorSheet
{
    private const int MostBanks = 3;
    private const double SmallerOfMany = 0.8;

    /// <summary>What stands on it; null without a switch.</summary>
    public static IReadOnlyList<Block>? Blocks(PaperInput input)
    {
        var places = input.Results.Bound.Switches.GroupBy(unit => Place(input, unit)).ToList();
        if (places.Count == 0)
            return null;
        var blocks = new List<Block>();
        foreach (var place in places)
        {
            foreach (var sheet in Sheets([.. place]))
            {
                if (blocks.Count > 0)
                    blocks.Add(new NewSheet());
                blocks.AddRange(One(input, place.Key, sheet));
            }
        }

        return blocks;
    }

    // As many switches as a sheet holds with all that is said on it; each sheet can hang by itself.
    private static IEnumerable<IReadOnlyList<BoundSwitch>> Sheets(IReadOnlyList<BoundSwitch> units)
    {
        for (var from = 0; from < units.Count;)
        {
            var (to, banks) = (from + 1, PortFront.BanksOf(units[from]));
            while (to < units.Count && banks + PortFront.BanksOf(units[to]) <= MostBanks)
                banks += PortFront.BanksOf(units[to++]);
            yield return [.. units.Skip(from).Take(to - from)];
            from = to;
        }
    }

    private static IEnumerable<Block> One(PaperInput input, string place, IReadOnlyList<BoundSwitch> units)
    {
        yield return new Facts([("here", place), ("call first", FirmOnPapers.Call(input)), ("as of", $"{input.Day}, design {input.Ledger.Design}"), ("then", "")]);
        foreach (var unit in units)
        {
            var on = new DeviceNames(input);
            yield return new Heading(string.Join(", ", new[] { unit.Id, unit.Model.Id, on.Address(unit.Id), unit.Placed.FedBy is { } feed ? $"fed by {feed}" : "" }.Where(part => part.Length > 0)));
            yield return new Drawn(PortFront.Of(input.Results.Bound, unit, units.Sum(PortFront.BanksOf) >= MostBanks ? SmallerOfMany : 1));
        }

        yield return new Words("Odd port numbers stand above even ones here; the numbers printed on the case count. A shaded port gives no power. Passwords are not in this room.", Lettering.Label);
        yield return new Heading("When nothing works");
        yield return new Words(Nothing(input, units));
    }

    private static string Nothing(PaperInput input, IReadOnlyList<BoundSwitch> units)
    {
        var supplies = units.Select(unit => unit.Placed.FedBy).OfType<string>().Distinct().ToList();
        var standby = input.Results.Standby.Supplies.Where(supply => supplies.Contains(supply.Placed.Id)).ToList();
        var minutes = standby.Select(supply => supply.Governing?.Seconds is { } seconds
            ? $"{supply.Placed.Id} holds about {Numbers.Show(Math.Floor(seconds / 60), "min")} when the mains is gone"
            : $"how long {supply.Placed.Id} holds is not known").ToList();
        return "1. Is there light elsewhere in the house? If not, wait for the mains. "
            + (minutes.Count > 0 ? LedgerInWords.Sentence(string.Join("; ", minutes)) : "")
            + "\n2. Are there lamps on the switch? If not, look at its plug and the outlet, and touch nothing else.\n3. Note what works and what does not, and the time.\n4. Call, and read out what this sheet says under 'here'.";
    }

    private static string Place(PaperInput input, BoundSwitch unit)
    {
        var rack = input.Job.Survey.Racks.FirstOrDefault(one => one.Id == unit.Placed.Standing.In);
        return rack is not null ? $"{(rack.Id.StartsWith("rack", StringComparison.OrdinalIgnoreCase) ? "" : "rack ")}{rack.Id}, {rack.In}" : unit.Space ?? unit.Placed.Standing.In ?? "place not said";
    }
}
