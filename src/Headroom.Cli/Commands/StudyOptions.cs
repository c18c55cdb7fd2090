using System.CommandLine;
using System.Globalization;
using Headroom.Cli.Text;
using Headroom.Domain.Firms;
using Headroom.Engineering;

namespace Headroom.Cli.Commands;

/// <summary>The options that say what is to be worked out and how it is shown; <c>study</c> and <c>explain</c> share them.</summary>
internal sealed class StudyOptions
{
    private readonly ValueOption _design = new("--design", "ID", "the design; otherwise the one the job has chosen");
    private readonly ValueOption _only = new("--only", "NAME,...", $"only some disciplines: {Words.Or(Study.Disciplines)}");
    private readonly ValueOption _count = new("--count", "[SWITCH=]WAY", $"count watts another way than is set: {Words.Or(CountText.Ways)}", often: true);
    private readonly ValueOption _on = new("--on", "DATE", "work it out for another day than today: 2026-11-25");
    private readonly ValueOption _units = new("--units", "metric|imperial", "units of the text; not of json and csv");
    private readonly ValueOption _format = new("--format", "text|json|csv", "text for people, json or csv for programs");
    private readonly ValueOption _catalogue = new("--catalogue", "FILE", "your own models, over those shipped; may be repeated", often: true);

    private readonly ValueOption _readings = new("--readings", "FILE", "watts that your firm read at other sites (CSV: site, model, mode, watts); may be repeated", often: true);

    private readonly ValueOption _rates = new("--rates", "FILE", "your firm's rates and margins; what the job says wins");

    /// <summary>Makes the options with their checks.</summary>
    /// <param name="formats">The formats the command can write.</param>
    public StudyOptions(params string[] formats)
    {
        _only.Checked(given => given.Split(',').Select(name => ValueOption.Complaint(name.Trim(), Study.Disciplines)).FirstOrDefault(problem => problem is not null));
        _count.Checked(CountText.Complaint);
        _on.Checked(given => Day(given) is null ? $"is a day written as 2026-11-25, not '{given}'" : null);
        _units.OneOf("metric", "imperial");
        _format.OneOf(formats);
        _format.HelpName = string.Join('|', formats);
    }

    /// <summary>Adds them to a command, without those that mean nothing there or that it has itself.</summary>
    /// <param name="command">The command.</param>
    /// <param name="without">The names of those, such as <c>--design</c>.</param>
    public void AddTo(Command command, params string[] without)
    {
        foreach (var option in All.Where(option => !without.Contains(option.Name)))
            command.Add(option);
    }

    /// <summary>The format asked for.</summary>
    public string Format(ParseResult parsed) => _format.One(parsed) ?? "text";

    /// <summary>The units asked for.</summary>
    public ShownUnits Units(ParseResult parsed) => new(_units.One(parsed) == "imperial");

    /// <summary>The units asked for, else those of the firm.</summary>
    public ShownUnits Units(ParseResult parsed, Firm? firm) => _units.One(parsed) is null ? new(firm?.Imperial ?? false) : Units(parsed);

    /// <summary>The firm's own catalogue files.</summary>
    public IReadOnlyList<string> Catalogues(ParseResult parsed) => _catalogue.All(parsed);

    /// <summary>The firm's own files of readings.</summary>
    public IReadOnlyList<string> Readings(ParseResult parsed) => _readings.All(parsed);

    /// <summary>The firm's file of rates; null for none.</summary>
    public string? Rates(ParseResult parsed) => _rates.One(parsed);

    /// <summary>What is to be worked out.</summary>
    public StudyRequest Request(ParseResult parsed, DateOnly today) => new(
        _design.One(parsed),
        _on.One(parsed) is { } on ? Day(on)!.Value : today,
        [.. _count.All(parsed).Select(CountText.Read).OfType<CountAs>()],
        _only.One(parsed)?.Split(',', StringSplitOptions.TrimEntries));

    /// <summary>The options as given that lead to the same ledger again.</summary>
    public string Again(ParseResult parsed) => string.Join(
        ' ',
        new[] { _design, _count, _on, _units, _readings, _rates, _catalogue }.SelectMany(option => option.All(parsed).Select(value => $"{option.Name} {Words.Quoted(value)}")));

    private IEnumerable<ValueOption> All => [_design, _only, _count, _on, _units, _format, _readings, _rates, _catalogue];

    private static DateOnly? Day(string text) =>
        DateOnly.TryParseExact(text, "yyyy-MM-dd", CultureInfo.InvariantCulture, DateTimeStyles.None, out var day) ? day : null;
}
