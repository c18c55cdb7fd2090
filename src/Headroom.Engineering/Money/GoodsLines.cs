using Headroom.Domain.Catalogues;
using Headroom.Domain.Quantities;
using Headroom.Engineering.Binding;
using Amount = Headroom.Domain.Quantities.Money;

namespace Headroom.Engineering.Money;

/// <summary>The goods of an offer: what the design has, what the survey hangs on it, and the cable between.</summary>
internal sealed class GoodsLines(BoundDesign bound, MoneyNeeds needs, Pricing pricing)
{
    private readonly List<PricedLine> _lines = [];

    /// <summary>The lines, units first.</summary>
    public List<PricedLine> Find()
    {
        Units();
        Endpoints();
        Modules();
        Fittings();
        Cables();
        SmallThings();
        return _lines;
    }

    /// <summary>Drops that are laid.</summary>
    public static int Laid(BoundDesign bound) => bound.Runs.Count(run => !run.Drop.Existing);

    /// <summary>True when the client has it already, by model or by id.</summary>
    public static bool LeftOut(BoundDesign bound, string model, string id) => bound.Job.Money!.LeaveOut.Contains(model) || bound.Job.Money.LeaveOut.Contains(id);

    private void Units()
    {
        foreach (var group in bound.Switches.Where(unit => !LeftOut(bound, unit.Model.Id, unit.Id)).GroupBy(unit => (unit.Model.Id, Supply: unit.Supply?.Id)))
        {
            var (model, supply) = (group.First().Model, group.First().Supply);
            var body = Cost(PriceOf(model.Body));
            var cost = supply?.Price is { } more ? body + Cost(more) : body;
            Add(supply is null || model.Supplies.Count < 2 ? model.Id : $"{model.Id}, supply {supply.Id}", (group.Count(), ""), cost, (model.Id, Origin(model.Body)));
        }

        foreach (var group in bound.Injectors.Where(unit => !LeftOut(bound, unit.Model.Id, unit.Id)).GroupBy(unit => unit.Model.Id))
            Add(group.First().Model.Body, group.Count());
        foreach (var group in bound.Design.Standby.Where(unit => unit.Model is { } model && !LeftOut(bound, model, unit.Id)).GroupBy(unit => unit.Model!))
        {
            if (bound.Catalogue.Standby.TryGetValue(group.Key, out var model))
                Add(model.Body, group.Count());
        }
    }

    // What is of no kind that an installer brings, such as a workstation, is the client's own.
    private void Endpoints()
    {
        foreach (var group in bound.Endpoints.Where(endpoint => endpoint.Model.Kind != "other" && !LeftOut(bound, endpoint.Model.Id, endpoint.Id)).GroupBy(endpoint => endpoint.Model.Id))
            Add(group.First().Model.Body, group.Count());
    }

    private void Modules()
    {
        var counts = new Dictionary<string, int>();
        foreach (var uplink in bound.Design.Uplinks ?? [])
        {
            if (uplink.Module is { } near)
                counts[near] = counts.GetValueOrDefault(near) + 1;
            // A cord with a module at each end is one thing, and what lies outside the job is somebody else's.
            if (uplink.To.Port is not null && uplink.Media != "direct" && (uplink.FarModule ?? uplink.Module) is { } far)
                counts[far] = counts.GetValueOrDefault(far) + 1;
        }

        foreach (var (name, count) in counts)
        {
            if (bound.Catalogue.Modules.TryGetValue(name, out var module))
                Add(module.Body, count);
        }
    }

    private void Fittings()
    {
        foreach (var fitting in bound.Design.Fittings)
            Add($"{fitting.Kind} {fitting.Id}", (1, ""), Cost(fitting.Price), (fitting.Id, Origins.Of(fitting.Price)));
    }

    private void Cables()
    {
        foreach (var cable in needs.Cables)
        {
            var body = bound.Catalogue.Cables.GetValueOrDefault(cable.Cable)?.Body ?? bound.Catalogue.Fibres.GetValueOrDefault(cable.Cable)?.Body;
            var metres = Math.Ceiling((decimal)cable.Metres);
            Add($"cable {cable.Cable}", (metres, "m"), body is null ? null : Cost(PriceOf(body)), (cable.Cable, Origins.Of(body is null ? null : PriceOf(body))));
            if (cable.NotKnown.Count > 0)
                _lines.Add(new PricedLine($"cable {cable.Cable} of {Words.List(cable.NotKnown)}", 0, "m", null, null, null, null) { Question = $"how long are {Words.List(cable.NotKnown)}?", Origin = "not surveyed" });
        }
    }

    private void SmallThings()
    {
        var withDrop = bound.Design.Patch.Count(patch => bound.Runs.Any(run => run.Drop.Id == patch.What));
        var cords = bound.Design.Patch.Count + withDrop;
        Small("cord", "patch cords", cords);
        Small("label", "labels", 2 * Laid(bound) + bound.Switches.Count + bound.Injectors.Count + bound.Design.Standby.Count);
        Small("panel", "patch panels of 24", bound.Runs.Where(run => !run.Drop.Existing && !run.IsFibre).GroupBy(run => run.Drop.From).Sum(group => (group.Count() + 23) / 24));
    }

    private void Small(string key, string what, int count)
    {
        if (count > 0 && bound.Job.Money!.Each.TryGetValue(key, out var price))
            Add(what, (count, ""), Cost(price), (key, Origins.Of(price)));
    }

    private void Add(Body body, int count) => Add(body.Id, (count, ""), Cost(PriceOf(body)), (body.Id, Origin(body)));

    private void Add(string what, (decimal Number, string Unit) count, decimal? each, (string Name, string Origin) told) => _lines.Add(
        new PricedLine(what, count.Number, count.Unit, count.Number * each, pricing.Net(count.Number * each), null, null)
        {
            Question = each is null ? $"what does {told.Name} cost in {pricing.Currency}?" : pricing.Margin is null ? "which margin is wanted? write 'margin'" : null,
            Origin = told.Origin,
        });

    private decimal? Cost(Given<Amount>? price) => pricing.Of(price);

    private Given<Amount>? PriceOf(Body body) => Pricing.PriceOf(bound.Job, body);

    private string Origin(Body body) => Origins.Of(PriceOf(body));
}
