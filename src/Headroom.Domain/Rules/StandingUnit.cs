using Headroom.Domain.Catalogues;
using Headroom.Domain.Findings;
using Headroom.Domain.Jobs;

namespace Headroom.Domain.Rules;

/// <summary>A unit of a design, as far as its place goes.</summary>
/// <param name="Id">Its id.</param>
/// <param name="Standing">Where it stands.</param>
/// <param name="Body">Its model's body; null when the model is not known.</param>
/// <param name="At">Where it is written.</param>
internal sealed record StandingUnit(string Id, Standing Standing, Body? Body, Place At);
