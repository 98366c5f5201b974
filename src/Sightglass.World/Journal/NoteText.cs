using System.Runtime.CompilerServices;
using System.Text;

namespace Sightglass.World.Journal;

/// <summary>A sentence that is put together only where a journal is kept: in a trial nothing is built.</summary>
[InterpolatedStringHandler]
public readonly ref struct NoteText
{
    private readonly StringBuilder? _text;

    public NoteText(int literalLength, int formattedCount, World world, out bool kept)
    {
        ArgumentNullException.ThrowIfNull(world);
        kept = world.Journal is not null;
        _text = kept ? new StringBuilder(literalLength + (16 * formattedCount)) : null;
    }

    public void AppendLiteral(string value) => _text!.Append(value);

    public void AppendFormatted(string? value) => _text!.Append(value);

    public void AppendFormatted(double value, string format) => _text!.Append(value.ToString(format, System.Globalization.CultureInfo.InvariantCulture));

    public void AppendFormatted(int value) => _text!.Append(value);

    public override string ToString() => _text?.ToString() ?? "";
}
