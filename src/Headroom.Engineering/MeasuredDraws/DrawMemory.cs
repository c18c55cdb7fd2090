using System.Collections.Concurrent;
using System.Globalization;

namespace Headroom.Engineering.MeasuredDraws;

/// <summary>Keeps fits and totals of readings from one study to the next, where many changes of one design are studied: what is asked again is not worked out again.</summary>
/// <remarks>It changes no figure: what it keeps is found by everything that it was worked out from. It may be used from several threads.</remarks>
public sealed class DrawMemory
{
    private readonly ConcurrentDictionary<string, FittedDraw> _fits = new();
    private readonly ConcurrentDictionary<string, DrawTotal> _totals = new();

    /// <summary>The fit of some readings, worked out when it is first asked for.</summary>
    internal FittedDraw Fit((string Model, string Mode) of, IReadOnlyList<SiteReadings> sites, double nameplate, Func<FittedDraw> make)
    {
        var read = string.Join(';', sites.Select(site => $"{site.Site}:{string.Join(',', site.Watts.Select(Text))}"));
        var key = $"{of.Model}/{of.Mode}/{Text(nameplate)}/{read}";
        return _fits.GetOrAdd(key, _ => make() with { Memory = this, Key = key });
    }

    /// <summary>The total of some groups, worked out when it is first asked for.</summary>
    internal DrawTotal Total(IReadOnlyList<DrawGroup> groups, Func<IReadOnlyList<DrawGroup>, DrawTotal> make) =>
        _totals.GetOrAdd(string.Join('\n', groups.Select(group => $"{group.Fitted.Key}|{group.Units}|{Text(group.MostWatts)}")), _ => make(groups));

    private static string Text(double value) => value.ToString("R", CultureInfo.InvariantCulture);
}
