using Sightglass.Basics.Quantities;

namespace Sightglass.Book.Kinds;

public sealed record KindQuantity(string Name, Dimension Dimension, string Doc, bool IsCondition = false);
