using Headroom.Domain.Catalogues;
using Headroom.Domain.Quantities;

namespace Headroom.JobFiles.Fields;

/// <summary>The octave bands of a sound.</summary>
internal static class BandFields
{
    // Every spelling that is met on data sheets.
    private static WordShape<int> Band => new([.. OctaveLevels.Names.Select((name, band) => (name, band))])
    {
        Also = [.. Enumerable.Range(0, 4).Select(band => ($"{OctaveLevels.Names[band]} Hz", band)), .. Thousands("000"), .. Thousands(" kHz"), .. Thousands("000 Hz")],
    };

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
        var missing = OctaveLevels.Names.Where((_, band) => levels[band] is null).ToList();
        if (missing.Count == 0)
            return new OctaveLevels(Array.ConvertAll(levels, level => level!.Value), at);
        values.Reader.Refuse(
            Slips.BandMissing, at, $"the bands of {values.Reader.Name} lack {Words.Or(missing).Replace(" or ", " and ", StringComparison.Ordinal)}", $"all eight: {string.Join(", ", OctaveLevels.Names)}",
            "write the missing ones, or leave all of them out: then a generic spectrum is taken");
        return null;
    }

    private static IEnumerable<(string Word, int Band)> Thousands(string behind) =>
        Enumerable.Range(4, 4).Select(band => ($"{1 << (band - 4)}{behind}", band));
}
