using Headroom.Domain.Findings;

namespace Headroom.Domain.Jobs;

/// <summary>A measured value with its instrument, place, time and conditions.</summary>
/// <param name="What">The quantity, from the list of quantities: watts, volts, amperes, ohms, sound, temperature ...</param>
/// <param name="Where">The id of the thing or spot it was taken at, such as <c>sw-1/5</c> or <c>desk</c>.</param>
/// <param name="Value">The value in <paramref name="Unit"/>.</param>
/// <param name="Unit">The unit.</param>
/// <param name="PlusMinus">Half the interval, in the same unit; null when not written.</param>
/// <param name="Written">The value as written.</param>
/// <param name="Instrument">What it was measured with; null when not written.</param>
/// <param name="Calibrated">Whether the instrument is calibrated; null when not written.</param>
/// <param name="UpperBound">Whether the value is only known to be no more than this.</param>
/// <param name="On">The day; null when not written.</param>
/// <param name="While">The conditions in words or a state (<c>typical</c>, <c>night</c>, <c>restart</c>); null when not written.</param>
/// <param name="Background">The background of a sound reading [dB(A)]; null when not written.</param>
/// <param name="Distance">The distance of a sound reading from its source [m]; null when not written.</param>
/// <param name="Method">How it was taken, such as a fibre reference method; null when not written.</param>
/// <param name="Direction">From which end it was taken; null when not written.</param>
/// <param name="Pair">Which pair of the cable, as on the plug (<c>1-2</c>); null when not written.</param>
/// <param name="At">Where it stands in the file.</param>
public sealed record Reading(
    string What,
    string Where,
    double Value,
    string Unit,
    double? PlusMinus,
    string Written,
    string? Instrument,
    bool? Calibrated,
    bool UpperBound,
    DateOnly? On,
    string? While,
    double? Background,
    double? Distance,
    string? Method,
    string? Direction,
    string? Pair,
    Place At);
