using Headroom.Domain.Quantities;

namespace Headroom.JobFiles.Sheets;

/// <summary>Units as people write them in sheets, besides the spellings that a job file takes.</summary>
internal static class UnitWords
{
    // From memory and common practice, no source.
    private static readonly Dictionary<string, string> Also = new(StringComparer.OrdinalIgnoreCase)
    {
        ["'"] = "ft", ["′"] = "ft", ["ft."] = "ft", ["fuß"] = "ft", ["fuss"] = "ft", ["pieds"] = "ft", ["pied"] = "ft", ["voet"] = "ft", ["pies"] = "ft",
        ["\""] = "in", ["zoll"] = "in",
        ["m."] = "m", ["mtr"] = "m", ["mtrs"] = "m", ["lfm"] = "m", ["lm"] = "m", ["mètre"] = "m", ["mètres"] = "m", ["metros"] = "m", ["metri"] = "m",
        ["watt"] = "W", ["watts"] = "W", ["volt"] = "V", ["volts"] = "V", ["amp"] = "A", ["amps"] = "A", ["ohm"] = "Ω", ["ohms"] = "Ω",
        ["c"] = "°C", ["deg c"] = "°C", ["grad"] = "°C", ["celsius"] = "°C", ["f"] = "°F", ["deg f"] = "°F", ["fahrenheit"] = "°F",
        ["dba"] = "dB(A)", ["db a"] = "dB(A)", ["minutes"] = "min", ["minuten"] = "min", ["mbit/s"] = "Mb/s", ["mbps"] = "Mb/s", ["gbit/s"] = "Gb/s", ["gbps"] = "Gb/s",
    };

    /// <summary>The unit of a word; null when the quantity has none such, or when capital letters would have to decide between two.</summary>
    public static Unit? Find(string word, UnitTable units)
    {
        if (units.Find(word) is { } exact)
            return exact;
        if (Also.TryGetValue(word, out var usual) && units.Find(usual) is { } known)
            return known;
        var near = units.Units.Where(unit => unit.Aliases.Prepend(unit.Symbol).Contains(word, StringComparer.OrdinalIgnoreCase)).ToList();
        return near is [var only] ? only : null;
    }

    /// <summary>The currency of a sign; null when it is that of several.</summary>
    public static string? Currency(string sign) => sign switch
    {
        "€" => "EUR",
        "£" => "GBP",
        _ => sign.Length == 3 && sign.All(char.IsAsciiLetter) ? sign.ToUpperInvariant() : null,
    };
}
