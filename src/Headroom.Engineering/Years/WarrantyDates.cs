using Headroom.Domain.Catalogues;
using Headroom.Domain.Jobs;
using Headroom.Engineering.Binding;

namespace Headroom.Engineering.Years;

/// <summary>When the warranties of the units of a design end.</summary>
internal static class WarrantyDates
{
    /// <summary>One for each unit whose warranty has not ended before.</summary>
    public static IEnumerable<DueDate> Of(Design design, Catalogue catalogue, YearsPolicy policy, DateOnly on) => Units(design, catalogue)
        .Select(unit => Of(unit, policy)).Where(due => due.On is null || due.On >= on);

    private static IEnumerable<(string Id, Standing Standing, Body? Body)> Units(Design design, Catalogue catalogue) =>
    [
        .. design.Switches.Select(unit => (unit.Id, unit.Standing, Find(catalogue.Switches, unit.Model)?.Body)),
        .. design.Injectors.Select(unit => (unit.Id, unit.Standing, Find(catalogue.Injectors, unit.Model)?.Body)),
        .. design.Standby.Select(unit => (unit.Id, unit.Standing, Find(catalogue.Standby, unit.Model)?.Body)),
    ];

    private static DueDate Of((string Id, Standing Standing, Body? Body) unit, YearsPolicy policy)
    {
        const string What = "warranty ends";
        if ((unit.Body?.Warranty ?? policy.Warranty) is not { } warranty)
            return new(null, unit.Id, What, "not known", $"how long is the warranty of {unit.Body?.Id ?? unit.Id}? its maker or seller says; write 'warranty' at the model or in the policy");
        if ((unit.Standing.Since ?? policy.Installed) is not { } since)
            return new(null, unit.Id, What, $"{warranty.Written} ({Origins.Of(warranty)})", $"when was {unit.Id} put in? write 'since' at it, or 'installed' in the policy");
        return new(
            DueDates.After(since, warranty), unit.Id, What,
            $"{warranty.Written} ({Origins.Of(warranty)}) from {YearWords.Plain(since)} on, {(unit.Standing.Since is null ? "when the site was handed over" : "when it was put in")}", null);
    }

    private static T? Find<T>(IReadOnlyDictionary<string, T> models, string? name)
        where T : class => name is null ? null : models.GetValueOrDefault(name);
}
