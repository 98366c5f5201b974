namespace Sightglass.Paper.Document;

/// <summary>The sheet a paper is printed on.</summary>
/// <param name="Name">As it is asked for.</param>
/// <param name="Width">mm.</param>
/// <param name="Height">mm.</param>
/// <param name="Margin">mm on all sides.</param>
public sealed record PaperSheet(string Name, double Width, double Height, double Margin)
{
    public static readonly PaperSheet Letter = new("letter", 215.9, 279.4, 16);
    public static readonly PaperSheet A4 = new("a4", 210, 297, 16);
    public static readonly PaperSheet A6 = new("a6", 105, 148, 7);

    /// <summary>Three panels side by side, folded like a fan; printed on both sides where three are not enough.</summary>
    public static readonly PaperSheet FoldedLetter = new("folded-letter", 279.4, 215.9, 8) { Panels = 3 };
    public static readonly PaperSheet FoldedA4 = new("folded-a4", 297, 210, 8) { Panels = 3 };
    public static readonly PaperSheet Tabloid = new("tabloid", 431.8, 279.4, 12);
    public static readonly PaperSheet A3 = new("a3", 420, 297, 12);
    public static readonly PaperSheet A2 = new("a2", 420, 594, 14);

    /// <summary>Sizes (ISO 216 and ANSI/ASME Y14.1, from memory).</summary>
    public static readonly IReadOnlyList<PaperSheet> All = [Letter, A4, A6, FoldedLetter, FoldedA4, Tabloid, A3, A2];

    /// <summary>Panels that the sheet is folded into; 1 for a flat one.</summary>
    public int Panels { get; init; } = 1;

    /// <summary>Whether type is 18 pt at least.</summary>
    public bool Large { get; init; }

    public static PaperSheet? Find(string name) => All.FirstOrDefault(s => string.Equals(s.Name, name, StringComparison.OrdinalIgnoreCase));

    /// <summary>Whether a paper of that look is printed on it.</summary>
    public bool Fits(PaperLook look) => look switch
    {
        PaperLook.Pocket => this == A6 || Panels > 1 || this == Letter || this == A4,
        PaperLook.Poster => this == Tabloid || this == A3 || this == A2,
        _ => Panels == 1 && this != A6,
    };

    /// <summary>It on its long side.</summary>
    public PaperSheet Turned => this with { Width = Math.Max(Width, Height), Height = Math.Min(Width, Height) };

    /// <summary>The usual sheet of a look.</summary>
    public static PaperSheet Default(PaperLook look) => look switch
    {
        PaperLook.Pocket => A6,
        PaperLook.Poster => A2,
        _ => Letter,
    };
}
