using Headroom.Domain.Shown;

namespace Headroom.Documents.Drawings.Plates;

/// <summary>An axis from nothing to a round end, with round steps.</summary>
internal sealed class Axis
{
    private static readonly double[] Decimal = [1, 2, 5, 10];
    private static readonly double[] Sixties = [1, 2, 5, 10, 15, 20, 30, 60, 120, 300, 600, 900, 1800, 3600, 7200, 14400, 43200, 86400];

    private Axis(double step, int steps, double length) => (Step, Steps, Length) = (step, steps, length);

    /// <summary>From one mark to the next.</summary>
    public double Step { get; }

    /// <summary>How many steps it has.</summary>
    public int Steps { get; }

    /// <summary>How long it is [pt].</summary>
    public double Length { get; }

    /// <summary>Its marks.</summary>
    public IEnumerable<double> Marks => Enumerable.Range(0, Steps + 1).Select(i => i * Step);

    /// <summary>An axis of figures.</summary>
    /// <param name="most">What must lie on it; above 0.</param>
    /// <param name="length">How long it is [pt].</param>
    /// <param name="steps">About how many steps.</param>
    public static Axis Of(double most, double length, int steps = 5)
    {
        var ten = Math.Pow(10, Math.Floor(Math.Log10(most / steps)));
        return Fitted(Decimal.Select(one => one * ten).First(step => step * steps >= most * (1 - 1e-9)), most, length);
    }

    /// <summary>An axis of time.</summary>
    /// <param name="seconds">What must lie on it [s]; above 0.</param>
    /// <param name="length">How long it is [pt].</param>
    public static Axis OfTime(double seconds, double length) =>
        Fitted(Sixties.FirstOrDefault(step => step * 7 >= seconds, Math.Ceiling(seconds / 7 / 86400) * 86400), seconds, length);

    /// <summary>How far along it a value lies [pt].</summary>
    /// <param name="value">The value.</param>
    public double At(double value) => Math.Clamp(value / (Step * Steps), 0, 1) * Length;

    /// <summary>A time on an axis: seconds below the minute, minutes below two hours, hours beyond.</summary>
    /// <param name="seconds">The time [s].</param>
    public string Time(double seconds) => Step < 60 && Step * Steps < 120 ? Numbers.Show(seconds, "s")
        : Step * Steps <= 7200 ? Numbers.Show(Math.Round(seconds / 60, 2), "min")
        : Numbers.Show(Math.Round(seconds / 3600, 2), "h");

    private static Axis Fitted(double step, double most, double length) => new(step, Math.Max(1, (int)Math.Ceiling(most / step - 1e-9)), length);
}
