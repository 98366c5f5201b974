namespace Sightglass.Drawing.Text;

/// <summary>The faces that drawings use, with their weight.</summary>
public enum TextFace
{
    Sans400,
    Sans500,
    Sans600,
    Sans700,
    Serif400,
    Serif600,
    SerifItalic400,
}
