using System.CommandLine;
using System.Globalization;
using Headroom.Cli.Text;
using Headroom.Domain.Catalogues;
using Headroom.Domain.Jobs;
using Headroom.Engineering;
using Headroom.Planning;
using Headroom.Planning.Packing;

namespace Headroom.Cli.Commands;

/// <summary>The options that say what is to be planned; <c>propose</c> and <c>turn</c> share them.</summary>
internal sealed class PlanOptions
{
    private readonly ValueOption _keep = new("--keep", "SWITCH", "a switch of today's design that stays; may be repeated", often: true);
    private readonly ValueOption _notIn = new("--not-in", "SPACE", "nothing may stand there; may be repeated", often: true);
    private readonly ValueOption _model = new("--model", "MODEL", "the only switch models that may be used; may be repeated", often: true);
    private readonly ValueOption _owns = new("--owns", "MODEL=N", "what the client has already, at no cost; may be repeated", often: true);
    private readonly FlagOption _fanless = new("--fanless", "no switch may have a fan");
    private readonly FlagOption _moveCords = new("--move-cords", "cords may move; without it they stay where they can");
    private readonly FlagOption _noGrowth = new("--no-growth", "leave out the growth that the policy asks for");
    private readonly ValueOption _today = new("--today", "ID", "the design of today; otherwise the one the job has chosen");
    private readonly ValueOption _work = new("--work", "N", "how hard to look at each step, about seconds; 20 without");
    private readonly ValueOption _time = new("--time", "SECONDS", "stop then with the best so far, which may differ");
    private readonly ValueOption _on = new("--on", "DATE", "work it out for another day than today: 2026-11-25");
    private readonly ValueOption _format = new("--format", "text|json", "text for people, json for programs");
    private readonly ValueOption _catalogue = new("--catalogue", "FILE", "your own models, over those shipped; may be repeated", often: true);
    private readonly ValueOption _readings = new("--readings", "FILE", "watts read at other sites (CSV); may be repeated", often: true);

    /// <summary>Makes the options with their checks.</summary>
    public PlanOptions()
    {
        _owns.Checked(given => Owned(given) is null ? $"is MODEL=N with N from 1, not '{given}'" : null);
        _work.Checked(given => Number(given) is null ? $"is a number above 0, not '{given}'" : null);
        _time.Checked(given => Number(given) is null ? $"is a number of seconds above 0, not '{given}'" : null);
        _on.Checked(given => Day(given) is null ? $"is a day written as 2026-11-25, not '{given}'" : null);
        _format.OneOf("text", "json");
    }

    /// <summary>Adds all to a command.</summary>
    public void AddTo(Command command)
    {
        foreach (var option in new Option[] { _keep, _notIn, _model, _owns, _fanless, _moveCords, _noGrowth, _today, _work, _time, _on, _format, _readings, _catalogue })
            command.Add(option);
    }

    /// <summary>True when JSON is asked for.</summary>
    public bool IsJson(ParseResult parsed) => _format.One(parsed) == "json";

    /// <summary>The job and its models; null when something stands in the way, which has then been said.</summary>
    public (Job Job, Catalogue Models)? Read(string job, ParseResult parsed, Desk desk)
    {
        var read = JobSource.Read(job, _catalogue.All(parsed), desk, out var models);
        FindingsReport.Write(desk.Err, read.Findings);
        return read.Ok && models is not null ? (read.Value!, models) : null;
    }

    /// <summary>What is to be planned; null when a file cannot be read, which has then been said.</summary>
    public PlanRequest? Request(ParseResult parsed, Desk desk, PlanStop stop)
    {
        var on = _on.One(parsed) is { } day ? Day(day)!.Value : desk.Today;
        if (FirmRecord.Add(StudyRequest.Whole(on), _readings.All(parsed), desk) is not { } study)
            return null;
        if (_time.One(parsed) is { } time)
            stop.After(Number(time)!.Value);
        return new PlanRequest(on)
        {
            Pins = Pins(parsed),
            Today = _today.One(parsed),
            FirmReadings = study.FirmReadings,
            Effort = new PackEffort(_work.One(parsed) is { } work ? Number(work)!.Value : PackEffort.Usual.Work)
            {
                Stop = stop.Token,
                Told = desk.SomebodyLooksOn ? new PlanProgress(desk).Tell : null,
            },
        };
    }

    /// <summary>The options as given that lead to the same study again.</summary>
    public string Again(ParseResult parsed) => string.Join(
        ' ', new[] { _on, _readings, _catalogue }.SelectMany(option => option.All(parsed).Select(value => $"{option.Name} {Words.Quoted(value)}")));

    private PlanPins Pins(ParseResult parsed) => new()
    {
        Keep = _keep.All(parsed),
        NotIn = _notIn.All(parsed),
        Models = _model.All(parsed),
        Fanless = parsed.GetValue(_fanless),
        MoveCords = parsed.GetValue(_moveCords),
        WithoutGrowth = parsed.GetValue(_noGrowth),
        Owned = _owns.All(parsed).Select(given => Owned(given)!.Value).GroupBy(one => one.Model).ToDictionary(group => group.Key, group => group.Sum(one => one.Count)),
    };

    private static (string Model, int Count)? Owned(string text)
    {
        var parts = text.Split('=');
        return parts.Length == 2 && parts[0].Length > 0 && int.TryParse(parts[1], NumberStyles.None, CultureInfo.InvariantCulture, out var count) && count is > 0 and < 1000 ? (parts[0], count) : null;
    }

    private static double? Number(string text) =>
        double.TryParse(text, NumberStyles.AllowDecimalPoint, CultureInfo.InvariantCulture, out var value) && value is > 0 and < 100_000 ? value : null;

    private static DateOnly? Day(string text) =>
        DateOnly.TryParseExact(text, "yyyy-MM-dd", CultureInfo.InvariantCulture, DateTimeStyles.None, out var day) ? day : null;
}
