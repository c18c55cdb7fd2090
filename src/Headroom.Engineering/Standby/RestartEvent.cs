namespace Headroom.Engineering.Standby;

/// <summary>One thing that happens after the mains is back, as it is told.</summary>
/// <param name="Seconds">When, from the mains coming back [s].</param>
/// <param name="Known">False when something before it is not known: it happens then or later.</param>
/// <param name="Unit">The switch, injector or service it is about.</param>
/// <param name="Text">What happens.</param>
public sealed record RestartEvent(double Seconds, bool Known, string Unit, string Text);
