using System.Globalization;
using Headroom.Domain.Catalogues;
using Headroom.Domain.Findings;
using Headroom.Domain.Jobs;
using Headroom.Domain.Quantities;
using Headroom.Engineering.Power;

namespace Headroom.Planning.Turning;

/// <summary>Makes what can be turned in a job.</summary>
internal sealed class Knobs(Job job, Catalogue catalogue)
{
    /// <summary>The words in front of the colon.</summary>
    public static IReadOnlyList<string> Words { get; } = ["draw", "price", "count", "noise", "runtime", "reserve"];

    /// <summary>The knob of a word such as <c>draw:bulrush</c>; null with what is wrong with it.</summary>
    public (Knob? Knob, string? Complaint) Of(string on)
    {
        var parts = on.Split(':', 2);
        var name = parts.Length > 1 ? parts[1] : null;
        return (parts[0], name) switch
        {
            ("draw", { } model) => Draw(on, model),
            ("price", { } model) => Price(on, model),
            ("count", { } kind) => Count(on, kind),
            ("noise", { } listener) => Noise(on, listener),
            ("runtime", null) => Runtime(on),
            ("reserve", _) => Reserve(on, name ?? "power"),
            _ => (null, $"'{on}' is nothing that can be turned: draw:MODEL, price:MODEL, count:KIND, noise:LISTENER, runtime, reserve or reserve:KIND"),
        };
    }

    private (Knob?, string?) Draw(string on, string model)
    {
        if (!job.Survey.Endpoints.Any(endpoint => endpoint.Model == model))
            return (null, $"no endpoint of the job is a '{model}'{Near(model, job.Survey.Endpoints.Select(endpoint => endpoint.Model))}");
        var endpoint = catalogue.Endpoints[model];
        if (endpoint.Power is null || endpoint.Draws.Count == 0)
            return (null, $"{model} takes no power over the cable, or its draws are not known");
        var now = endpoint.Draws.Values.Max(draw => draw.Value.Value);
        return (new(on, $"what each {model} draws at its most", "W", now, Math.Round(now * 0.1, 1), Math.Min(71, now * 6), 0.1, watts => (job, With(endpoint, watts / now))) { KeepsUnits = true }, null);
    }

    // All states in proportion; a device that asks for more than its class is of a higher one.
    private Catalogue With(EndpointModel model, double factor)
    {
        var draws = model.Draws.ToDictionary(draw => draw.Key, draw => Make.Given(new Watts(draw.Value.Value.Value * factor)));
        var most = draws.Values.Max(draw => draw.Value.Value);
        var needed = Enumerable.Range(1, 8).FirstOrDefault(cls => PoeClasses.DeviceWatts(cls) >= most - 1e-9, 8);
        var power = model.Power!;
        var changed = model with
        {
            Draws = draws,
            Power = power with
            {
                Class = power.Class is { } cls && cls > 0 && needed > cls ? needed : power.Class,
                Asks = power.Asks is { } asks ? Make.Given(new Watts(Math.Min(asks.Value.Value * factor, 71.3))) : null,
            },
        };
        return catalogue with { Endpoints = new Dictionary<string, EndpointModel>(catalogue.Endpoints) { [model.Id] = changed } };
    }

    private (Knob?, string?) Price(string on, string model)
    {
        var body = catalogue.Switches.GetValueOrDefault(model)?.Body ?? catalogue.Injectors.GetValueOrDefault(model)?.Body ?? catalogue.Standby.GetValueOrDefault(model)?.Body ?? catalogue.Modules.GetValueOrDefault(model)?.Body;
        if (body is null)
            return (null, $"the catalogue has no switch, injector, standby supply or module '{model}'{Near(model, catalogue.Switches.Keys)}");
        if ((job.Prices.LastOrDefault(price => price.Model == model)?.Cost ?? body.Price) is not { } price)
            return (null, $"the price of {model} is not known");
        var (now, currency) = ((double)price.Value.Amount, price.Value.Currency);
        return (new(on, $"what one {model} costs", currency, now, 0, Math.Max(100, now * 4), 0.01, amount => (job with { Prices = [.. job.Prices, new Price(model, Amount(amount, currency), null, null, null, Place.None)] }, catalogue)) { KeepsUnits = true }, null);
    }

    private static Given<Money> Amount(double amount, string currency) =>
        new(new Money(Math.Round((decimal)amount, 2), currency), string.Create(CultureInfo.InvariantCulture, $"{amount:0.00} {currency}"), Origin.Assumed, null, Place.None);

    private (Knob?, string?) Count(string on, string kind)
    {
        var of = job.Survey.Endpoints.Where(endpoint => endpoint.Model == kind || catalogue.Endpoints[endpoint.Model].Kind == kind).ToList();
        if (of.Count == 0)
            return (null, $"no endpoint of the job is a '{kind}'{Near(kind, job.Survey.Endpoints.SelectMany(endpoint => new[] { endpoint.Model, catalogue.Endpoints[endpoint.Model].Kind }))}");
        return (new(on, $"how many there are of {kind}", "of them", of.Count, 0, of.Count + 48, 1, count => (WithCount(of, (int)Math.Round(count)), catalogue)) { KeepsUnits = true }, null);
    }

    // More of the last one, each with a cable of its own like that one's; fewer from the end.
    private Job WithCount(List<Endpoint> of, int count)
    {
        var survey = job.Survey;
        var gone = of.Skip(count).Select(endpoint => endpoint.Id).ToHashSet();
        var drop = survey.Drops.FirstOrDefault(drop => drop.Id == of[^1].Drop);
        var more = Enumerable.Range(1, Math.Max(0, count - of.Count)).ToList();
        return job with
        {
            Survey = survey with
            {
                Endpoints = [.. survey.Endpoints.Where(endpoint => !gone.Contains(endpoint.Id)), .. more.Select(i => of[^1] with { Id = $"{of[^1].Id}+{i}", Drop = drop is null ? null : $"{drop.Id}+{i}" })],
                Drops = drop is null ? survey.Drops : [.. survey.Drops, .. more.Select(i => drop with { Id = $"{drop.Id}+{i}" })],
            },
        };
    }

    private (Knob?, string?) Noise(string on, string id)
    {
        var listener = job.Survey.Listeners.FirstOrDefault(listener => listener.Id == id);
        if (listener is null)
            return (null, $"the job has no listener '{id}'{Near(id, job.Survey.Listeners.Select(one => one.Id))}");
        if (listener.Limit is not { } limit)
            return (null, $"nobody has written a limit for {id}");
        return (new(on, $"what {id} may hear", "dB(A)", limit.Value.Value, 10, 70, 0.1, level => (job with { Survey = job.Survey with { Listeners = [.. job.Survey.Listeners.Select(one => one.Id == id ? one with { Limit = Make.Given(new SoundPressure(level)) } : one)] } }, catalogue)), null);
    }

    private (Knob?, string?) Runtime(string on) => job.Policy.Outage.Runtime is not { } runtime || job.Policy.Outage.Keep.Count == 0
        ? (null, "nobody has written which minutes on battery are wanted, and what is to go on: write 'outage' in the policy")
        : (new(on, "how long standby supplies must hold", "min", runtime.Value.Value / 60, 1, Math.Max(60, runtime.Value.Value / 60 * 8), 0.5, minutes => (job with { Policy = job.Policy with { Outage = job.Policy.Outage with { Runtime = Make.Given(new Seconds(minutes * 60)) } } }, catalogue)), null);

    private (Knob?, string?) Reserve(string on, string kind)
    {
        if (!Policy.Kinds.ContainsKey(kind))
            return (null, $"'{kind}' is no kind of limit{Near(kind, Policy.Kinds.Keys)}");
        var reserve = job.Policy.ReserveOf(kind);
        if (reserve.Share is not { } share)
            return (null, $"the reserve of {kind} is {reserve.Written}, not a share: only shares can be turned");
        return (new(on, $"the reserve of {kind}", "%", share * 100, 0, 60, 0.5, percent => (job with { Policy = job.Policy with { Reserves = new Dictionary<string, Reserve>(job.Policy.Reserves) { [kind] = new Reserve(percent / 100, null, string.Create(CultureInfo.InvariantCulture, $"{percent:0.#} %"), Origin.Assumed, Place.None) } } }, catalogue)), null);
    }

    private static string Near(string word, IEnumerable<string> known) => Spelling.Nearest(word, known.Distinct()) is { } near ? $"; did you mean {near}?" : "";
}
