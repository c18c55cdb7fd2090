namespace Headroom.Desk.Shown;

/// <summary>A design in the list of designs.</summary>
/// <param name="Design">Its id.</param>
/// <param name="Short">How many entries are short.</param>
/// <param name="Tight">How many are tight.</param>
/// <param name="Unknown">How many are unknown.</param>
/// <param name="Money">What the offer comes to; empty when not known.</param>
/// <param name="Worst">Its worst entry, in words.</param>
public sealed record DesignLine(string Design, int Short, int Tight, int Unknown, string Money, string Worst);
