namespace Headroom.Engineering.Traffic;

/// <summary>A class of traffic with its marking.</summary>
/// <param name="Name">The name of the class.</param>
/// <param name="Word">The word of the marking, such as <c>EF</c>.</param>
/// <param name="Dscp">The code point in the header, 0 to 63.</param>
/// <param name="For">What is put into it on a small site, in words; empty where nothing is.</param>
public sealed record MarkingClass(string Name, string Word, int Dscp, string For)
{
    /// <summary>The whole octet in the header: the code point and two bits more.</summary>
    public int Octet => Dscp * 4;

    /// <summary>The upper three bits, which equipment without a table takes for its priority.</summary>
    public int UpperBits => Dscp >> 3;
}
