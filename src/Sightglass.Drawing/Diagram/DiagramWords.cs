namespace Sightglass.Drawing.Diagram;

/// <summary>Draws the words of a diagram.</summary>
internal static class DiagramWords
{
    public static void Draw(DiagramPen pen)
    {
        pen.Writer.Open("g", ("class", "words"));
        foreach (DiagramLabel label in pen.Layout.Labels.Where(l => l.Text.Length > 0))
        {
            string style = label.Style == "line-words" ? $"line-words words-{(label.Medium.Length > 0 ? label.Medium : pen.Layout.Input.Medium)}" : label.Style;
            double factor = label.Style switch { "body-words" => 1.4, "row-words" => 1.1, _ => 1 };
            pen.Writer.Text(style, label.X, label.Y, label.Text, ("text-anchor", label.Anchor == "start" ? null : label.Anchor), ("style", pen.FontSize(factor)));
        }

        pen.Writer.Close();
    }
}
