namespace Headroom.Store.Databases;

/// <summary>What leads from one schema to the next.</summary>
/// <param name="Version">The schema it leads to.</param>
/// <param name="Statements">The statements; <c>{bytes}</c> and <c>{numbered}</c> stand for the types that differ.</param>
/// <param name="Tables">The tables that are new, in the order in which rows can be put in.</param>
internal sealed record SchemaStep(int Version, IReadOnlyList<string> Statements, IReadOnlyList<string> Tables);
