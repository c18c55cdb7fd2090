using Headroom.Domain.Catalogues;
using Headroom.Domain.Quantities;

namespace Headroom.JobFiles.Fields;

/// <summary>The octave bands of a sound.</summary>
internal static class BandFields
{
    private const int Under1000 = 4;

    private static WordShape<int> Band => new(Named()) { Also = OtherSpellings() };

    /// <summary>The bands.</summary>
    public static Field<IReadOnlyList<Entry<int, Given<BandLevel>>>> Bands { get; } = new(
        "bands",
        () => new MapShape<int, Given<BandLevel>>("", Band, Sensible.BandLevel) { KeyExample = "63", ThingExample = "38 dB" },
        "Its octave bands from 63 Hz to 8 kHz, unweighted, all eight; they spread the level written beside them.",
        "{63: 38 dB, 125: 40 dB, 250: 43 dB, 500: 46 dB, 1k: 47 dB, 2k: 46 dB, 4k: 43 dB, 8k: 37 dB}");

    /// <summary>The bands as far as they are written; none, with a finding, when one is missing.</summary>
    public static OctaveLevels? Build(Values values)
    {
        if (values.Get(Bands) is not { } written)
            return null;
        var levels = new double?[OctaveLevels.Names.Count];
        foreach (var entry in written)
            levels[entry.Key] = entry.Value.Value.Value;
        var at = values.Entry(Bands)!.Value.At;
        var known = new double[levels.Length];
        var missing = new List<string>();
        for (var band = 0; band < levels.Length; band++)
        {
            known[band] = levels[band] ?? 0;
            if (levels[band] is null)
                missing.Add(OctaveLevels.Names[band]);
        }

        if (missing.Count == 0)
            return new OctaveLevels(known, at);
        values.Reader.Refuse(
            Slips.BandMissing, at, $"the bands of {values.Reader.Name} lack {Words.Or(missing).Replace(" or ", " and ", StringComparison.Ordinal)}", $"all eight: {string.Join(", ", OctaveLevels.Names)}",
            "write the missing ones, or leave all of them out: then a generic spectrum is taken");
        return null;
    }

    // Plain loops: most switches of the catalogue have bands, and queries over pairs are compiled at each start.
    private static (string Word, int Band)[] Named()
    {
        var named = new (string, int)[OctaveLevels.Names.Count];
        for (var band = 0; band < named.Length; band++)
            named[band] = (OctaveLevels.Names[band], band);
        return named;
    }

    // Every spelling that is met on data sheets.
    private static (string Word, int Band)[] OtherSpellings()
    {
        string[] endings = ["000", " kHz", "000 Hz"];
        var high = OctaveLevels.Names.Count - Under1000;
        var also = new (string, int)[Under1000 + endings.Length * high];
        for (var band = 0; band < Under1000; band++)
            also[band] = ($"{OctaveLevels.Names[band]} Hz", band);
        for (var i = 0; i < endings.Length * high; i++)
            also[Under1000 + i] = ($"{1 << (i % high)}{endings[i / high]}", Under1000 + i % high);
        return also;
    }
}
