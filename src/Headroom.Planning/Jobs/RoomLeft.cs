namespace Headroom.Planning.Jobs;

/// <summary>What a design leaves free.</summary>
internal sealed class RoomLeft
{
    /// <summary>Counts it.</summary>
    public RoomLeft(JobPacking packing, Candidate found)
    {
        foreach (var packed in found.Packed.Boxes)
        {
            var box = packing.Boxes[packed.Box];
            var used = new int[box.Purchase.Model.Ports.Count];
            foreach (var (way, count) in packed.Items.Where(item => !packing.Kinds[box.Ways[item.Key].Kind].IsGrowth))
                used[box.Ways[way].Group] += count;
            foreach (var link in packed.Links)
                used[link.Group] += link.Inner + link.Outer;
            for (var group = 0; group < used.Length; group++)
            {
                var port = box.Purchase.Model.Ports[group];
                if (port.Media != "copper")
                    continue;
                var free = port.Last - port.First + 1 - used[group];
                Ports += free;
                Powered += port.Poe is not null ? free : 0;
            }

            if (box.Purchase.Midspans is { } midspans)
                Powered += (midspans.Count * midspans.Model.Ports) - packed.Items.Where(item => box.Ways[item.Key].Unit > 0 && !packing.Kinds[box.Ways[item.Key].Kind].IsGrowth).Sum(item => item.Value);
        }

        var watts = found.Ledger.Entries.Where(entry => entry is { Discipline: "power", Quantity: "watts" } && found.Design.Switches.Any(unit => unit.Id == entry.Subject)).ToList();
        Watts = watts.Exists(entry => entry.Left is null) ? null : watts.Sum(entry => entry.Left!.Value);
    }

    /// <summary>Copper ports.</summary>
    public int Ports { get; }

    /// <summary>Those that give power.</summary>
    public int Powered { get; }

    /// <summary>Watts, reserve included [W]; null when not known.</summary>
    public double? Watts { get; }
}
