using System.Text;

namespace Sightglass.Drawing.Svg;

/// <summary>Builds the <c>d</c> of a path, in pixels.</summary>
public sealed class SvgPath
{
    private readonly StringBuilder _d = new();

    public bool IsEmpty => _d.Length == 0;

    public SvgPath Move(double x, double y) => Add('M', x, y);

    public SvgPath Line(double x, double y) => Add('L', x, y);

    public SvgPath Horizontal(double x) => Add('H', x);

    public SvgPath Vertical(double y) => Add('V', y);

    public SvgPath Curve(double x1, double y1, double x2, double y2, double x, double y) => Add('C', x1, y1, x2, y2, x, y);

    public SvgPath Quadratic(double x1, double y1, double x, double y) => Add('Q', x1, y1, x, y);

    /// <summary>An arc of a circle.</summary>
    public SvgPath Arc(double radius, bool large, bool clockwise, double x, double y) =>
        Add('A', radius, radius, 0, large ? 1 : 0, clockwise ? 1 : 0, x, y);

    public SvgPath Rectangle(double x, double y, double width, double height) =>
        Move(x, y).Horizontal(x + width).Vertical(y + height).Horizontal(x).Close();

    public SvgPath Segment(double x1, double y1, double x2, double y2)
    {
        Move(x1, y1);
        return x1 == x2 ? Vertical(y2) : y1 == y2 ? Horizontal(x2) : Line(x2, y2);
    }

    /// <summary>A line through points.</summary>
    public SvgPath Polyline(IEnumerable<(double X, double Y)> points)
    {
        bool first = true;
        foreach ((double x, double y) in points)
        {
            _ = first ? Move(x, y) : Line(x, y);
            first = false;
        }

        return this;
    }

    public SvgPath Close()
    {
        _d.Append('Z');
        return this;
    }

    public override string ToString() => _d.ToString();

    internal SvgPath Add(char command, params ReadOnlySpan<double> numbers)
    {
        _d.Append(command);
        for (int i = 0; i < numbers.Length; i++)
        {
            if (i > 0)
            {
                _d.Append(' ');
            }

            _d.Append(SvgNumber.Format(numbers[i]));
        }

        return this;
    }
}
