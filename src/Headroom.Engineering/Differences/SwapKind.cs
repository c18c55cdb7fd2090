using Headroom.Domain.Catalogues;
using Headroom.Domain.Jobs;

namespace Headroom.Engineering.Differences;

/// <summary>A kind of model that can be swapped: which of it a job has, which there are, and how one takes the place of another.</summary>
/// <param name="Noun">What one is called, with its article.</param>
/// <param name="Used">The models that a design and the survey have.</param>
/// <param name="Known">The models there are.</param>
/// <param name="Put">Puts one in the place of another.</param>
internal sealed record SwapKind(
    string Noun,
    Func<Design, Survey, IEnumerable<string?>> Used,
    Func<Catalogue, IEnumerable<string>> Known,
    Func<(Design Design, Survey Survey), ModelSwap, (Design Design, Survey Survey)> Put)
{
    /// <summary>What of the survey has a model, by id; null where the design has it, whose differences are told by themselves.</summary>
    public Func<Survey, string, IEnumerable<string>>? Holders { get; init; }

    /// <summary>All kinds.</summary>
    public static IReadOnlyList<SwapKind> All { get; } =
    [
        // A supply is one of its own model's: the new model comes with its first.
        new("a switch",
            (design, _) => design.Switches.Select(unit => unit.Model),
            catalogue => catalogue.Switches.Keys,
            (at, swap) => at with { Design = at.Design with { Switches = [.. at.Design.Switches.Select(unit => unit.Model == swap.Model ? unit with { Model = swap.Other, Supply = null } : unit)] } }),
        new("an injector",
            (design, _) => design.Injectors.Select(unit => unit.Model),
            catalogue => catalogue.Injectors.Keys,
            (at, swap) => at with { Design = at.Design with { Injectors = [.. at.Design.Injectors.Select(unit => unit.Model == swap.Model ? unit with { Model = swap.Other } : unit)] } }),
        new("a standby supply",
            (design, _) => design.Standby.Select(unit => unit.Model),
            catalogue => catalogue.Standby.Keys,
            (at, swap) => at with { Design = at.Design with { Standby = [.. at.Design.Standby.Select(unit => unit.Model == swap.Model ? unit with { Model = swap.Other } : unit)] } }),
        new("a module",
            (design, _) => (design.Uplinks ?? []).Select(link => link.Module),
            catalogue => catalogue.Modules.Keys,
            (at, swap) => at with { Design = at.Design with { Uplinks = [.. (at.Design.Uplinks ?? []).Select(link => link.Module == swap.Model ? link with { Module = swap.Other } : link)] } }),
        new("an endpoint",
            (_, survey) => survey.Endpoints.Select(endpoint => endpoint.Model),
            catalogue => catalogue.Endpoints.Keys,
            (at, swap) => at with { Survey = at.Survey with { Endpoints = [.. at.Survey.Endpoints.Select(endpoint => endpoint.Model == swap.Model ? endpoint with { Model = swap.Other } : endpoint)] } })
        {
            Holders = (survey, model) => survey.Endpoints.Where(endpoint => endpoint.Model == model).Select(endpoint => endpoint.Id),
        },
        new("a cable",
            (_, survey) => survey.Drops.SelectMany(Pieces).Select(piece => piece.Cable),
            catalogue => catalogue.Cables.Keys.Concat(catalogue.Fibres.Keys),
            (at, swap) => at with { Survey = at.Survey with { Drops = [.. at.Survey.Drops.Select(drop => Lay(drop, swap))] } })
        {
            Holders = (survey, model) => survey.Drops.Where(drop => Pieces(drop).Any(piece => piece.Cable == model)).Select(drop => drop.Id),
        },
    ];

    private static IEnumerable<RunPiece> Pieces(Drop drop) => drop.Pieces.Concat(new[] { drop.CordAtPanel, drop.CordAtDevice }.OfType<RunPiece>());

    private static Drop Lay(Drop drop, ModelSwap swap)
    {
        return drop with { Pieces = [.. drop.Pieces.Select(Swapped)], CordAtPanel = Other(drop.CordAtPanel), CordAtDevice = Other(drop.CordAtDevice) };

        RunPiece Swapped(RunPiece piece) => piece.Cable == swap.Model ? piece with { Cable = swap.Other } : piece;

        RunPiece? Other(RunPiece? cord) => cord is null ? null : Swapped(cord);
    }
}
