using Headroom.Domain.Quantities;

namespace Headroom.Domain.Catalogues;

/// <summary>A pluggable module, or a direct-attach cord with a module at each end.</summary>
/// <param name="Body">Price, ratings and place.</param>
/// <param name="Speed">Data rate [bit/s].</param>
/// <param name="Media">multimode, singlemode, copper or direct.</param>
/// <param name="Wavelength">Transmit wavelength [nm]; null for copper.</param>
/// <param name="Receives">Receive wavelength where it differs [nm]; null when the same.</param>
/// <param name="Reach">Reach by fibre category, or by <c>copper</c> [m].</param>
/// <param name="LossBudget">Least power budget [dB]; null when not known or copper.</param>
/// <param name="Draw">What it draws from the switch [W]; null when not known.</param>
public sealed record ModuleModel(
    Body Body,
    Given<BitsPerSecond> Speed,
    string Media,
    Given<Nanometres>? Wavelength,
    Given<Nanometres>? Receives,
    IReadOnlyDictionary<string, Given<Metres>> Reach,
    Given<Decibels>? LossBudget,
    Given<Watts>? Draw)
{
    /// <summary>The port type of IEEE 802.3, such as <c>10GBASE-SR</c>; null when it follows none or it is not known.</summary>
    public string? PortType { get; init; }

    /// <summary>The plug it takes: LC, SC or RJ45; null when not known or when its cord is part of it.</summary>
    public string? Connector { get; init; }

    /// <summary>The invented name.</summary>
    public string Id => Body.Id;
}
