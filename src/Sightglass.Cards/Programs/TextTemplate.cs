using System.Collections.Immutable;
using System.Text;
using Sightglass.Basics.Quantities;

namespace Sightglass.Cards.Programs;

/// <summary>What a person says, with the places where numbers go.</summary>
public sealed record TextTemplate(ImmutableArray<TextPart> Parts)
{
    public static readonly TextTemplate Empty = new([]);

    /// <summary>The whole text where no number goes into it.</summary>
    private readonly string? _fixed = Parts.All(p => p is TextPart.Words) ? string.Concat(Parts.OfType<TextPart.Words>().Select(w => w.Text)) : null;

    /// <summary>The text as said, with the numbers written down so far (SI, by index of <see cref="CardProgram.Names"/>).</summary>
    public string Say(ReadOnlySpan<double> written)
    {
        if (_fixed is not null)
        {
            return _fixed;
        }

        StringBuilder text = new();
        foreach (TextPart part in Parts)
        {
            switch (part)
            {
                case TextPart.Words words:
                    text.Append(words.Text);
                    break;
                case TextPart.Value value:
                    text.Append(QuantityFormat.Text(value.Expression.Evaluate(written), value.Unit, value.Resolution));
                    break;
            }
        }

        return text.ToString();
    }
}
