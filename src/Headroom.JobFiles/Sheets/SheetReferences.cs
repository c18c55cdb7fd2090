using Headroom.JobFiles.Yaml;

namespace Headroom.JobFiles.Sheets;

/// <summary>Sees where a spreadsheet program has dropped the zeros in front of a drop's number: the sheet says 7, the job has 07.</summary>
internal static class SheetReferences
{
    private const int MostDigits = 6;

    /// <summary>Adds a finding for each drop named so.</summary>
    public static void Check(SheetKind kind, IReadOnlyList<YamlEntry> entries, SheetSite site, (SheetSlips Slips, LeftRows Left) found)
    {
        var named = kind == SheetKinds.Patching ? entries.Select(entry => entry.Key)
            : kind == SheetKinds.Endpoints ? entries.Select(entry => (entry.Value as YamlMap)?.Find("drop")?.Value).OfType<YamlScalar>()
            : [];
        foreach (var drop in named.Where(drop => drop.Text.Length is > 0 and < MostDigits && drop.Text.All(char.IsAsciiDigit) && !site.Drops.Contains(drop.Text)))
        {
            if (Enumerable.Range(drop.Text.Length + 1, MostDigits - drop.Text.Length).Select(digits => drop.Text.PadLeft(digits, '0')).FirstOrDefault(site.Drops.Contains) is { } meant)
            {
                found.Left.Add(drop.Text);
                found.Slips.Refuse(SheetCodes.LostZero, drop.At, ($"drop '{drop.Text}' is not in the job", "the name of a drop as the job has it", $"probably it is {meant}: zeros in front of it were lost; format the column as text, then type it again"));
            }
        }
    }
}
