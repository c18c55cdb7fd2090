namespace Headroom.Engineering.MeasuredDraws;

/// <summary>Chances of watts on a grid of whole steps, added up by direct convolution. What lies between two steps counts for the upper.</summary>
/// <remarks>Source: convolution of independent discrete distributions, any textbook; the tails come out exactly where a normal sum would make them too small.</remarks>
public sealed class DrawGrid
{
    private readonly double[] _chances;
    private readonly double _step;

    private DrawGrid(double[] chances, double stepWatts) => (_chances, _step) = (chances, stepWatts);

    /// <summary>The expected watts [W].</summary>
    public double MeanWatts
    {
        get
        {
            var mean = 0.0;
            for (var i = 0; i < _chances.Length; i++)
                mean += _chances[i] * i * _step;
            return mean;
        }
    }

    /// <summary>Standard deviation of the watts [W].</summary>
    public double SpreadWatts
    {
        get
        {
            var (mean, squares) = (MeanWatts, 0.0);
            for (var i = 0; i < _chances.Length; i++)
                squares += _chances[i] * (i * _step - mean) * (i * _step - mean);
            return Math.Sqrt(squares);
        }
    }

    /// <summary>Nothing that draws.</summary>
    /// <param name="stepWatts">The step of the grid [W]; above 0.</param>
    /// <returns>Certainly 0 W.</returns>
    /// <remarks>Source: definition.</remarks>
    public static DrawGrid Nothing(double stepWatts)
    {
        Require.Above0(stepWatts, "W");
        return new([1], stepWatts);
    }

    /// <summary>One device with states, each with its chance.</summary>
    /// <param name="states">The draw of each state [W] and its chance [1]; chances add up to 1.</param>
    /// <param name="stepWatts">The step of the grid [W]; above 0.</param>
    /// <returns>The chances.</returns>
    /// <remarks>Source: definition; a draw between two steps counts for the upper.</remarks>
    public static DrawGrid OfStates(IReadOnlyList<(double Watts, double Chance)> states, double stepWatts)
    {
        Require.Above0(stepWatts, "W");
        var chances = new double[states.Max(state => Step(state.Watts, stepWatts)) + 1];
        foreach (var (watts, chance) in states)
            chances[Step(watts, stepWatts)] += chance;
        return new(chances, stepWatts);
    }

    /// <summary>Several units of a fitted model at a new site.</summary>
    /// <param name="model">The model.</param>
    /// <param name="units">How many [1]; 1 or more.</param>
    /// <param name="mostWatts">What they can draw at most together, by class or limit [W]; above 0.</param>
    /// <param name="stepWatts">The step of the grid [W]; above 0.</param>
    /// <returns>The chances; whatever lies above the most counts for the most.</returns>
    /// <remarks>Source: as <see cref="DrawModel.Below"/>.</remarks>
    public static DrawGrid Of(DrawModel model, int units, double mostWatts, double stepWatts)
    {
        Require.Above0(mostWatts, "W");
        var chances = new double[Step(mostWatts, stepWatts) + 1];
        var before = 0.0;
        for (var i = 0; i < chances.Length; i++)
        {
            var below = i == chances.Length - 1 ? 1 : model.Below(units, i * stepWatts);
            chances[i] = below - before;
            before = below;
        }

        return new(chances, stepWatts);
    }

    /// <summary>This and another that knows nothing of it, together.</summary>
    /// <param name="other">The other, on the same grid.</param>
    /// <returns>The sum.</returns>
    public DrawGrid And(DrawGrid other)
    {
        var sum = new double[_chances.Length + other._chances.Length - 1];
        for (var i = 0; i < _chances.Length; i++)
        {
            if (_chances[i] == 0)
                continue;
            for (var j = 0; j < other._chances.Length; j++)
                sum[i + j] += _chances[i] * other._chances[j];
        }

        return new(sum, _step);
    }

    /// <summary>This many times, each knowing nothing of the others.</summary>
    /// <param name="count">How many; 0 or more.</param>
    /// <returns>The sum.</returns>
    public DrawGrid Times(int count)
    {
        var sum = Nothing(_step);
        for (var i = 0; i < count; i++)
            sum = sum.And(this);
        return sum;
    }

    /// <summary>This with a chance, else another: a state that all share.</summary>
    /// <param name="chance">The chance of this [1]; 0 to 1.</param>
    /// <param name="other">The other.</param>
    /// <returns>The mixture.</returns>
    /// <remarks>Source: law of total probability. A budget goes by the worse of the two, not by the mixture.</remarks>
    public DrawGrid Or(double chance, DrawGrid other)
    {
        Require.Share(chance);
        var mixed = new double[Math.Max(_chances.Length, other._chances.Length)];
        for (var i = 0; i < mixed.Length; i++)
            mixed[i] = chance * (i < _chances.Length ? _chances[i] : 0) + (1 - chance) * (i < other._chances.Length ? other._chances[i] : 0);
        return new(mixed, _step);
    }

    /// <summary>The chance of no more than so much [1].</summary>
    /// <param name="watts">So much [W].</param>
    /// <returns>The chance [1].</returns>
    /// <remarks>Source: definition.</remarks>
    public double Below(double watts)
    {
        var sum = 0.0;
        for (var i = 0; i < _chances.Length && i * _step <= watts + 1e-9; i++)
            sum += _chances[i];
        return sum;
    }

    /// <summary>The least watts of the grid of which the chance of no more is reached [W].</summary>
    /// <param name="chance">The chance [1]; above 0 and below 1.</param>
    /// <returns>The watts [W].</returns>
    /// <remarks>Source: definition of a quantile.</remarks>
    public double Quantile(double chance)
    {
        var sum = 0.0;
        for (var i = 0; i < _chances.Length; i++)
        {
            if ((sum += _chances[i]) >= chance - 1e-12)
                return i * _step;
        }

        return (_chances.Length - 1) * _step;
    }

    private static int Step(double watts, double step) => (int)Math.Ceiling(watts / step - 1e-9);
}
