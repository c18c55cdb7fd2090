namespace Headroom.Desk.Tasks;

/// <summary>What goes along with long work.</summary>
/// <param name="By">Who asked.</param>
/// <param name="Tell">Says how far it is.</param>
/// <param name="Stop">Told when it is to stop.</param>
internal sealed record WorkPlace(string By, Action<string> Tell, CancellationToken Stop);
