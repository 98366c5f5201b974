using System.Collections.Immutable;
using System.Text;
using Sightglass.Basics.Diagnostics;
using Sightglass.Book.Kinds;
using Sightglass.Book.Schema;

namespace Sightglass.Book.Scaffold;

/// <summary>The files of a new book to start from: one place, one role, one tank with a glass, one orifice to the outside, one situation.</summary>
public static class BookScaffold
{
    private const string SchemaName = "book.schema.json";
    private const string Header = $"# yaml-language-server: $schema={SchemaName}\n";

    /// <summary>The files, their paths relative to the book's folder. They read without a finding and make a plant that runs.</summary>
    /// <param name="title">The title of the class; any text.</param>
    /// <param name="kinds">The kinds there are, for the schema by which an editor helps.</param>
    public static ImmutableArray<SourceText> New(string title, KindCatalog kinds)
    {
        ArgumentNullException.ThrowIfNull(title);
        ArgumentNullException.ThrowIfNull(kinds);
        return
        [
            new("book.yaml", Header + Head(Quoted(title))),
            new("items.yaml", Header + Items),
            new("situations.yaml", Header + Situations),
            new(SchemaName, BookSchema.Write(kinds)),
        ];
    }

    private static string Head(string title) => $$"""
        # The class and where people stand. Sections may stand in any file; split them as you like.
        book: {{title}}
        edition: "1"
        notice: Local rules, the maker's manual and qualified people decide.
        length: 20 m
        width: 3 m
        walk starts: right
        shown in: [L, cm, L/min]

        places:
          beside the tank: { x: 10 m, y: 2.4 m, z: 0 m, text: "On the ground, right side." }

        roles:
          mechanical: { walks: 1.3 m/s, reacts in: 2 s, text: Qualified to inspect and repair. }

        systems:
          fuel: { medium: fuel, alive: yes, text: One tank with a hole. }

        """;

    private const string Items = """
        # Pieces of equipment. `kind` says what an item is; without it the item is only described.
        items:
          tank:
            kind: tank
            system: fuel
            position: { x: 10 m, y: 0 m, z: 0.5 m }     # the middle of its floor
            places: [beside the tank]
            for: Holds the fuel.
            normal: No wet spots below.
            cautions:
              - { caution: "Fuel on ballast is slippery and burns. You can fall or be burned. Keep flames away." }
            shape: prismatic
            floor area: 2 m^2
            depth: 0.9 m
            ports:
              outlet: { height: 0 mm }
          hole:
            kind: orifice
            system: fuel
            from: tank, outlet
            to: outside
            diameter: 20 mm
          sight glass:
            kind: sight glass
            system: fuel
            position: { x: 10 m, y: 1.4 m, z: 0.5 m }
            places: [beside the tank]
            for: Shows the level of the tank.
            normal: Clean, the level where it was.
            of: tank
            bottom: 5 cm
            top: 85 cm
            scale: 5 cm .. 85 cm
            resolution: 1 cm
            words: { low: 5 cm .. 15 cm }

        # What stands on the machine several times is written once, as an assembly; docs/book.md tells more. Take the `# ` away to try:
        # assemblies:
        #   water trap:
        #     parameters: { area: { usual: 2 cm^2, text: Opening of its drain. } }
        #     items:
        #       "{name} trap": { kind: fuel line, system: fuel, volume: 1 L }
        #       "{name} drain": { kind: orifice, system: fuel, from: "{name} trap", to: outside, area: "{area}" }
        #     ports: { inlet: "{name} trap" }
        # ---
        # items:
        #   forward: { assembly: water trap }
        #   aft: { assembly: water trap, area: 3 cm^2 }
        #   pipe: { kind: orifice, system: fuel, from: "tank, outlet", to: "aft, inlet", diameter: 5 mm }

        """;

    private const string Situations = """
        # Where a world starts. Each value is fixed, a range, or one of several words.
        situations:
          draining:
            text: The tank runs out through the hole.
            people:
              - { role: mechanical, at: beside the tank }
            start:
              fill of tank: 40 % .. 95 %

        """;

    /// <summary>The text as a YAML value in double quotes, in one line.</summary>
    private static string Quoted(string text)
    {
        StringBuilder quoted = new("\"");
        foreach (Rune rune in text.EnumerateRunes())
        {
            string piece = rune.Value switch
            {
                '"' => "\\\"",
                '\\' => "\\\\",
                _ when Rune.IsControl(rune) || Rune.IsWhiteSpace(rune) => " ",
                _ when Rune.GetUnicodeCategory(rune) == System.Globalization.UnicodeCategory.Format => "",
                _ => rune.ToString(),
            };
            quoted.Append(piece);
        }

        return quoted.Append('"').ToString();
    }
}
