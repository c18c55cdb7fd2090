namespace Headroom.Store;

/// <summary>Why a store cannot be worked with: what it is, and what to do.</summary>
/// <param name="message">The reason and the advice.</param>
/// <param name="inner">What the database said; null when nothing.</param>
public sealed class StoreException(string message, Exception? inner = null) : Exception(message, inner);
