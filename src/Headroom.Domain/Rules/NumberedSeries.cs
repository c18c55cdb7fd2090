using Headroom.Domain.Findings;

namespace Headroom.Domain.Rules;

/// <summary>Ids that count up behind one prefix, such as K-01, K-02.</summary>
/// <param name="prefix">What stands before the number.</param>
/// <param name="width">How many digits the numbers have; 0 when they have no leading zeros.</param>
internal sealed class NumberedSeries(string prefix, int width)
{
    private readonly List<int> _numbers = [];
    private readonly List<Place> _places = [];

    /// <summary>What stands before the number.</summary>
    public string Prefix => prefix;

    /// <summary>How many digits the numbers have; 0 when they have no leading zeros.</summary>
    public int Width => width;

    /// <summary>How many there are.</summary>
    public int Count => _numbers.Count;

    /// <summary>The numbers, each once, from the lowest.</summary>
    public int[] Sorted()
    {
        var numbers = _numbers.ToArray();
        Array.Sort(numbers);
        return [.. numbers.Distinct()];
    }

    /// <summary>Where a number was written first.</summary>
    public Place PlaceOf(int number) => _places[_numbers.IndexOf(number)];

    /// <summary>Adds a number.</summary>
    public void Add(int number, Place at)
    {
        _numbers.Add(number);
        _places.Add(at);
    }

    /// <summary>Moves the numbers with so many digits to another series.</summary>
    public void Move(int digits, NumberedSeries to)
    {
        for (var i = 0; i < _numbers.Count; i++)
        {
            if (DigitsOf(_numbers[i]) == digits)
                to.Add(_numbers[i], _places[i]);
        }

        for (var i = _numbers.Count - 1; i >= 0; i--)
        {
            if (DigitsOf(_numbers[i]) != digits)
                continue;
            _numbers.RemoveAt(i);
            _places.RemoveAt(i);
        }
    }

    private static int DigitsOf(int number)
    {
        var digits = 1;
        for (; number >= 10; number /= 10)
            digits++;
        return digits;
    }
}
