namespace Headroom.Domain.Quantities;

/// <summary>Where a value comes from; it may be written as one word behind the value.</summary>
public enum Origin
{
    /// <summary>The file does not say.</summary>
    Unstated,

    /// <summary>Read from an instrument.</summary>
    Measured,

    /// <summary>Declared by whoever makes or sells it.</summary>
    Declared,

    /// <summary>Taken from a published standard.</summary>
    Standard,

    /// <summary>Taken for granted until somebody knows better.</summary>
    Assumed,

    /// <summary>Made up for a demonstration; it describes nothing that exists.</summary>
    Invented,
}
