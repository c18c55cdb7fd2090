namespace Headroom.Engineering.Airflow;

/// <summary>Where a fan and the path of its air meet.</summary>
/// <param name="Flow">The flow [m³/s].</param>
/// <param name="Pressure">The static pressure [Pa].</param>
public readonly record struct WorkingPoint(double Flow, double Pressure);
