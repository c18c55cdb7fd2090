using Headroom.Domain.Catalogues;
using Headroom.Domain.Jobs;
using Headroom.Engineering.Airflow;

namespace Headroom.Engineering.Heat;

/// <summary>What another fan in a switch, a moved one or an opened grille makes of its air and its sound, at full speed.</summary>
/// <param name="Own">The fan its maker fits; null when not known.</param>
/// <param name="Put">The fan put in its place, or the same where it stays; null when not known.</param>
public sealed record FanChange(FanModel? Own, FanModel? Put)
{
    /// <summary>How the new fan takes the volts there are; null when those are not known.</summary>
    public FanFit? Fit { get; init; }

    /// <summary>Speed of the new fan over its rated speed [1]; null when the volts are not known.</summary>
    public double? Speed { get; init; }

    /// <summary>Air of one fan as the maker has it, and with the new one [m³/s]; null when not known.</summary>
    public (double Own, double Put)? Flows { get; init; }

    /// <summary>Resistance of the path behind one fan [Pa/(m³/s)²]; null when not known.</summary>
    public double? Resistance { get; init; }

    /// <summary>What was changed in the way of the air; null when nothing was.</summary>
    public AirwayChange? Airway { get; init; }

    /// <summary>Resistance of the path behind one fan after the change [Pa/(m³/s)²]; null when not known.</summary>
    public double? ResistanceThen { get; init; }

    /// <summary>Change of its sound where the switch holds the air it had by turning its fans more slowly or faster [dB]; null when not known.</summary>
    public double? HeldDecibels => Decibels is { } full && FlowShare is > 0 and var share ? full + FanLaws.LevelChange(1 / share) : null;

    /// <summary>New flow over old [1]; null when not known; 0 where the fan may not start.</summary>
    public double? FlowShare => Fit == FanFit.MayNotStart ? 0 : Flows is { } flows ? flows.Put / flows.Own : null;

    /// <summary>Change of its sound at full speed [dB]; null when not known.</summary>
    public double? Decibels { get; init; }

    /// <summary>What does not fit, each a sentence; empty when everything does.</summary>
    public IReadOnlyList<string> Misfits { get; init; } = [];

    /// <summary>What is to be found out; null when nothing.</summary>
    public string? Question { get; init; }
}
