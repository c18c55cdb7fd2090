namespace Headroom.Engineering.Heat;

/// <summary>What the study of heat needs of the study of power, handed on by the study of the whole.</summary>
/// <param name="LoadOf">What a unit leaves where it stands, by its id.</param>
/// <param name="DevicesIn">What devices fed over cables leave in a space, by its id.</param>
public sealed record HeatInputs(Func<string, HeatLoad> LoadOf, Func<string, HeatLoad> DevicesIn);
