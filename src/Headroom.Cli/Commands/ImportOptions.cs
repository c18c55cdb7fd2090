using System.CommandLine;
using Headroom.Cli.Text;
using Headroom.Domain.Findings;
using Headroom.JobFiles;
using Headroom.JobFiles.Sheets;

namespace Headroom.Cli.Commands;

/// <summary>The options that say how a sheet is to be read.</summary>
internal sealed class ImportOptions
{
    private readonly ValueOption _as = new ValueOption("--as", string.Join('|', SheetImport.Kinds), "what its rows are").OneOf([.. SheetImport.Kinds]);
    private readonly ValueOption _design = new("--design", "ID", "the design that cords belong to; otherwise the chosen one, or the only one");
    private readonly ValueOption _column = PairOption.Of("--column", "HEADING=FIELD", "which field a column becomes, where the usual words do not tell: Run='length (ft)', Colour=none");
    private readonly ValueOption _names = PairOption.Of("--call", "THEIRS=OURS", "a name of the sheet and the one of the job or catalogue: 'IP phone=pipit'");
    private readonly ValueOption _otherwise = PairOption.Of("--otherwise", "FIELD=VALUE", "what holds where a row says nothing: from=cupboard");
    private readonly ValueOption _separator = new ValueOption("--separator", string.Join('|', SheetImport.Separators), "what stands between cells; otherwise it is found").OneOf([.. SheetImport.Separators]);
    private readonly ValueOption _decimals = new ValueOption("--decimals", string.Join('|', SheetImport.Decimals), "the decimal sign; otherwise the numbers tell").OneOf([.. SheetImport.Decimals]);
    private readonly ValueOption _days = new ValueOption("--days", "ORDER", Words.Or(SheetImport.Days)).OneOf([.. SheetImport.Days]);
    private readonly ValueOption _encoding = new ValueOption("--encoding", "NAME", $"{Words.Or(SheetImport.Encodings)}; otherwise found").OneOf([.. SheetImport.Encodings]);
    private readonly ValueOption _catalogue = new("--catalogue", "FILE", "your own models, over those shipped; may be repeated", often: true);
    private readonly FlagOption _write = new("--write", "writes the rows into the job file");
    private readonly FlagOption _all = new("--all", "lists every row, however many");

    /// <summary>Adds all to a command.</summary>
    public void AddTo(Command command)
    {
        foreach (var option in new Option[] { _as, _column, _names, _otherwise, _design, _separator, _decimals, _days, _encoding, _catalogue, _all, _write })
            command.Add(option);
    }

    /// <summary>What the rows are; null when it was not said.</summary>
    public string? Kind(ParseResult parsed) => _as.One(parsed);

    /// <summary>Whether the job is to be written.</summary>
    public bool Writes(ParseResult parsed) => parsed.GetValue(_write);

    /// <summary>Whether every row is listed.</summary>
    public bool All(ParseResult parsed) => parsed.GetValue(_all);

    /// <summary>The firm's own catalogue files.</summary>
    public IReadOnlyList<string> Catalogues(ParseResult parsed) => _catalogue.All(parsed);

    /// <summary>The sheet with all that was said about it.</summary>
    public SheetPlan Plan(ParseResult parsed, string sheet, string kind) => new(sheet, kind, new Place("what was typed", 0, 0))
    {
        Separator = _separator.One(parsed),
        Decimals = _decimals.One(parsed),
        Days = _days.One(parsed),
        Encoding = _encoding.One(parsed),
        Design = _design.One(parsed),
        Columns = PairOption.All(_column.All(parsed)),
        Names = PairOption.All(_names.All(parsed)),
        Otherwise = PairOption.All(_otherwise.All(parsed)),
    };
}
