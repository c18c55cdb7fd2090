using Headroom.Domain.Jobs;
using Headroom.Engineering.Binding;

namespace Headroom.Engineering.Traffic;

/// <summary>A link as an entry sees it.</summary>
/// <param name="Link">The link; the first of a bundle.</param>
/// <param name="Line">The line it leads to; null where it leads to a switch or the line is not written.</param>
/// <param name="Way">Which way.</param>
internal sealed record LinkSeen(SwitchLink Link, Line? Line, Way Way);
