using Headroom.Domain.Quantities;

namespace Headroom.Domain.Jobs;

/// <summary>What an hour costs and how long things take.</summary>
/// <param name="HourCost">What an hour costs the firm; null when not written.</param>
/// <param name="HourPrice">What an hour is charged; null when it follows from the margin.</param>
/// <param name="Tasks">Minutes of a task by its name, such as <c>drop</c>.</param>
/// <param name="Difficulty">How much harder this site is than most, common to all tasks; null for a site like most.</param>
/// <param name="Tax">The group of its tax; null for the usual one.</param>
public sealed record LabourTerms(
    Given<Money>? HourCost,
    Given<Money>? HourPrice,
    IReadOnlyDictionary<string, ThreePoint> Tasks,
    ThreePoint? Difficulty,
    string? Tax)
{
    /// <summary>What is put aside for coming back, as a share of the cost of the labour; null when nothing.</summary>
    public Given<Share>? CallBacks { get; init; }

    /// <summary>The tasks there are: each thing of the design that is laid, set up or mounted.</summary>
    public static IReadOnlyList<string> Names { get; } =
        ["drop", "panel", "switch", "injector", "standby supply", "phone", "access point", "camera", "door station", "radio", "other", "job"];
}
