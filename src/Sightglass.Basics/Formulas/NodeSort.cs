namespace Sightglass.Basics.Formulas;

/// <summary>What a part of a formula is.</summary>
internal enum NodeSort
{
    Value,
    Condition,
    Unknown,
}
