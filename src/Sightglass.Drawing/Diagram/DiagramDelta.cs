namespace Sightglass.Drawing.Diagram;

/// <summary>One change to a drawing that is shown already.</summary>
/// <param name="Id">Id of the element.</param>
/// <param name="Attribute">Attribute to set, or <see cref="Text"/> for the words inside.</param>
public readonly record struct DiagramDelta(string Id, string Attribute, string Value)
{
    /// <summary>Stands for the words inside an element.</summary>
    public const string Text = "#text";
}
