using Headroom.Domain.Findings;

namespace Headroom.JobFiles.Sheets;

/// <summary>Gathers the findings about a sheet, and stops listing where nobody reads on.</summary>
internal sealed class SheetSlips
{
    /// <summary>The most findings that are listed about one sheet.</summary>
    public const int MostListed = 200;

    private readonly List<Finding> _findings = [];

    /// <summary>The findings so far.</summary>
    public IReadOnlyList<Finding> Findings => _findings;

    /// <summary>True when one of them stands in the way.</summary>
    public bool Stands { get; private set; }

    /// <summary>Adds a finding that stands in the way.</summary>
    public void Refuse(FindingCode code, Place at, (string Given, string Allowed, string Advice) words)
    {
        Stands = true;
        Add(new Finding(Severity.Error, code.Code, at, words.Given, words.Allowed, words.Advice));
    }

    /// <summary>Refuses a row in which something stands under no heading.</summary>
    /// <returns>True when it was refused.</returns>
    public bool RefuseExtra(SheetRow row, int headings)
    {
        var extra = row.Cells.Skip(headings).FirstOrDefault(cell => cell.Text.Length > 0);
        if (extra is null)
            return false;
        Refuse(SheetCodes.ExtraCells, extra.At, ($"row {row.Number} has {row.Cells.Count} cells; {extra.Name} '{Words.Short(extra.Text)}' stands under no heading", $"as many cells as headings, which are {headings}", "see whether a value holds the separator, such as a decimal comma, and is not in quotation marks"));
        return true;
    }

    /// <summary>Adds a finding that asks.</summary>
    public void Ask(FindingCode code, Place at, (string Given, string Allowed, string Advice) words) =>
        Add(new Finding(Severity.Question, code.Code, at, words.Given, words.Allowed, words.Advice));

    /// <summary>Adds findings made elsewhere.</summary>
    public void Take(IEnumerable<Finding> findings)
    {
        foreach (var finding in findings)
        {
            Stands |= finding.Severity == Severity.Error;
            Add(finding);
        }
    }

    private void Add(Finding finding)
    {
        if (_findings.Count < MostListed)
            _findings.Add(finding);
        else if (_findings.Count == MostListed)
            _findings.Add(new Finding(Severity.Error, Files.FileCodes.More.Code, finding.At, $"more findings than the {MostListed} listed", "none of them", "mend those listed, then read the sheet again"));
    }
}
