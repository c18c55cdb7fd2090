namespace Headroom.Engineering.Power;

/// <summary>Why an endpoint gets nothing from its port, or must not be on it.</summary>
public enum PortFault
{
    /// <summary>Nothing is wrong with the kind of power.</summary>
    None,

    /// <summary>The port gives no power.</summary>
    NoPower,

    /// <summary>The port looks for a signature (IEEE 802.3) and finds none: a device for passive voltage stays dark, unharmed.</summary>
    NotDetected,

    /// <summary>Passive voltage below the turn-on voltage of a device with a class: it never starts, and the voltage is always on.</summary>
    NeverStarts,

    /// <summary>More volts on the pins than the device stands.</summary>
    TooManyVolts,

    /// <summary>Passive voltage on the pins of equipment that is not powered over the cable.</summary>
    NotMeantForVolts,
}
