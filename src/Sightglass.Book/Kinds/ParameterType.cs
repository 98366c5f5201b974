namespace Sightglass.Book.Kinds;

public enum ParameterType
{
    /// <summary>A number with a unit.</summary>
    Quantity,

    /// <summary>Plain text.</summary>
    Text,

    /// <summary>One of a few words.</summary>
    Choice,

    /// <summary>yes or no.</summary>
    YesNo,

    /// <summary>The name of an item.</summary>
    Item,

    /// <summary>A list of item names.</summary>
    Items,

    /// <summary>A map from the numbers of pins to the names of wires: what a plug brings together.</summary>
    Pins,

    /// <summary>A formula with the parameter's dimension.</summary>
    Formula,

    /// <summary>Rows of quantities: a dip table (height, volume) or a curve; column dimensions in <see cref="KindParameter.Choices"/> as <c>height: length</c>.</summary>
    Table,

    /// <summary>A map from position names to quantities, such as consumption by throttle position.</summary>
    ByPosition,
}
