using Headroom.Domain.Quantities;

namespace Headroom.Engineering.Acoustics;

/// <summary>Levels on a mesh over a room at one height, as data for a drawing.</summary>
/// <param name="Space">The space.</param>
/// <param name="Height">The height of the mesh above the floor [m].</param>
/// <param name="Columns">How many points along the room.</param>
/// <param name="Rows">How many across.</param>
/// <param name="StepX">From one column to the next [m]; the first lies half a step from the wall.</param>
/// <param name="StepY">From one row to the next [m].</param>
/// <param name="Levels">The levels row by row [dB(A)], equipment and background together; minus infinity where nothing is heard.</param>
public sealed record SoundGrid(string Space, double Height, int Columns, int Rows, double StepX, double StepY, double[] Levels)
{
    /// <summary>Level at a point of the mesh.</summary>
    /// <param name="column">The column, from 0.</param>
    /// <param name="row">The row, from 0.</param>
    /// <returns>The level [dB(A)].</returns>
    public double At(int column, int row) => Levels[row * Columns + column];

    /// <summary>Where a point of the mesh is.</summary>
    /// <param name="column">The column, from 0.</param>
    /// <param name="row">The row, from 0.</param>
    /// <returns>The spot [m].</returns>
    public Spot SpotAt(int column, int row) => new((column + 0.5) * StepX, (row + 0.5) * StepY, Height);
}
