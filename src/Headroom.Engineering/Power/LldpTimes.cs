namespace Headroom.Engineering.Power;

/// <summary>How often LLDP speaks, and how soon a power request is answered.</summary>
public static class LldpTimes
{
    /// <summary>Time between two messages [s]. Source: IEEE 802.1AB-2009, 9.2.5, from memory.</summary>
    public const int TransmitSeconds = 30;

    /// <summary>Messages that may be lost before a neighbour is forgotten. Source: IEEE 802.1AB-2009, 9.2.5, from memory.</summary>
    public const int Hold = 4;

    /// <summary>Time after which a silent neighbour is forgotten [s]. Source: IEEE 802.1AB-2009, 9.2.5, from memory.</summary>
    public const int TimeToLiveSeconds = TransmitSeconds * Hold + 1;

    /// <summary>Time between two messages to a new neighbour [s]. Source: IEEE 802.1AB-2009, 9.2.5, from memory.</summary>
    public const int FastSeconds = 1;

    /// <summary>Fast messages to a new neighbour. Source: IEEE 802.1AB-2009, 9.2.5, from memory.</summary>
    public const int FastCount = 4;

    /// <summary>Time within which a source answers a device's request [s]. Source: IEEE 802.3, 33.6.2, from memory.</summary>
    public const int AnswerSeconds = 10;
}
