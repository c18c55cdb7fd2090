using Headroom.Domain.Findings;

namespace Headroom.Domain.Records;

/// <summary>A measured value at some site, beside what was predicted there.</summary>
/// <param name="Site">The site.</param>
/// <param name="Model">The model it was taken at; null when not written.</param>
/// <param name="What">The quantity: <c>watts</c>, <c>temperature</c> ...</param>
/// <param name="Where">The place it was taken at; null when not written.</param>
/// <param name="Value">The value in <paramref name="Unit"/>.</param>
/// <param name="Unit">The unit of all values of it.</param>
/// <param name="PlusMinus">Half the interval of the instrument, in the same unit; null when not written.</param>
/// <param name="Mode">What was going on; <c>typical</c> where nothing is written.</param>
/// <param name="At">Where it stands.</param>
public sealed record FirmMeasurement(string Site, string? Model, string What, string? Where, double Value, string Unit, double? PlusMinus, string Mode, Place At)
{
    /// <summary>What was predicted, in <see cref="Unit"/>; null when nothing was.</summary>
    public double? Predicted { get; init; }

    /// <summary>Half the interval of the prediction, in the same unit; null when none was stated.</summary>
    public double? PredictedPlusMinus { get; init; }

    /// <summary>What it was measured with; null when not written.</summary>
    public string? Instrument { get; init; }

    /// <summary>Whether the instrument is calibrated; null when not written.</summary>
    public bool? Calibrated { get; init; }

    /// <summary>True when the value is only known to be no more than this.</summary>
    public bool UpperBound { get; init; }

    /// <summary>The day; null when not written.</summary>
    public DateOnly? On { get; init; }
}
