using Headroom.Domain.Catalogues;

namespace Headroom.Engineering.Failure;

/// <summary>A switch or midspan, and what becomes of it when one of its supplies fails.</summary>
/// <param name="Id">Its id.</param>
/// <param name="Model">Its model.</param>
/// <param name="Supply">Its supply; null when the model has none that is known.</param>
/// <param name="Feeds">True when any of its ports gives power.</param>
/// <param name="RunningWatts">What it gives its ports at the most while all runs [W]; null when not known.</param>
public sealed record SupplyLoss(string Id, string Model, SupplyModel? Supply, bool Feeds, double? RunningWatts);
