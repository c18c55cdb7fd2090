namespace Headroom.Engineering.Traffic;

/// <summary>What is asked of a link at a busy moment.</summary>
/// <param name="StreamDown">Streams towards the devices [bit/s].</param>
/// <param name="StreamUp">Streams from the devices [bit/s].</param>
/// <param name="Calls">Calls at once, each both ways.</param>
/// <param name="UsersDown">What active users take [bit/s].</param>
/// <param name="UsersUp">What active users send [bit/s].</param>
public readonly record struct TrafficDemand(double StreamDown, double StreamUp, int Calls, double UsersDown, double UsersUp)
{
    /// <summary>Towards the devices [bit/s].</summary>
    public double Down => StreamDown + Calls * VoiceRate.OrdinaryCall + UsersDown;

    /// <summary>From the devices [bit/s].</summary>
    public double Up => StreamUp + Calls * VoiceRate.OrdinaryCall + UsersUp;

    /// <summary>The busier way [bit/s].</summary>
    public double Busier => Math.Max(Down, Up);
}
