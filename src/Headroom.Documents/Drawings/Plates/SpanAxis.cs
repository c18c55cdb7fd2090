namespace Headroom.Documents.Drawings.Plates;

/// <summary>An axis that begins where what it shows begins, such as at the air outside, and goes on in round steps.</summary>
internal sealed class SpanAxis
{
    // Of a step: a round mark nearer to the beginning would stand over it.
    private const double TooNear = 0.45;

    private static readonly double[] Decimal = [1, 2, 5, 10];

    private SpanAxis(double from, double step, double most, double length) => (From, Step, To, Length) = (from, step, most, length);

    /// <summary>Where it begins.</summary>
    public double From { get; }

    /// <summary>From one round mark to the next.</summary>
    public double Step { get; }

    /// <summary>Where it ends, a round figure.</summary>
    public double To { get; }

    /// <summary>How long it is [pt].</summary>
    public double Length { get; }

    /// <summary>Its marks: its beginning, and the round figures behind it.</summary>
    public IEnumerable<double> Marks
    {
        get
        {
            yield return From;
            for (var i = Math.Floor(From / Step) + 1; i * Step <= To + Step * 1e-6; i++)
            {
                if (i * Step - From > TooNear * Step)
                    yield return i * Step;
            }
        }
    }

    /// <summary>Makes an axis.</summary>
    /// <param name="from">Where it begins.</param>
    /// <param name="most">What must lie on it; above where it begins.</param>
    /// <param name="length">How long it is [pt].</param>
    /// <param name="steps">About how many steps.</param>
    public static SpanAxis Of(double from, double most, double length, int steps = 5)
    {
        var ten = Math.Pow(10, Math.Floor(Math.Log10((most - from) / steps)));
        var step = Decimal.Select(one => one * ten).First(one => one * steps >= (most - from) * (1 - 1e-9));
        return new(from, step, Math.Ceiling(most / step - 1e-9) * step, length);
    }

    /// <summary>How far along it a value lies [pt].</summary>
    /// <param name="value">The value.</param>
    public double At(double value) => Math.Clamp((value - From) / (To - From), 0, 1) * Length;
}
