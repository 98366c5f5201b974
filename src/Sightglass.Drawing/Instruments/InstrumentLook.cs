using Sightglass.Book.Model;

namespace Sightglass.Drawing.Instruments;

/// <summary>A thing at a place as it looks now.</summary>
/// <param name="Item">What it is.</param>
/// <param name="Position">Of a control; null for what has none.</param>
/// <param name="Shows">SI, as an instrument shows it; null for what shows nothing.</param>
/// <param name="IsLit">Of a lamp; null for what is none.</param>
public sealed record InstrumentLook(Item Item, string? Position, double? Shows, bool? IsLit);
