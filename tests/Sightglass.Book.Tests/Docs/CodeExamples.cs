using Sightglass.Basics.Diagnostics;
using Sightglass.Book.Tests.Golden;
using Sightglass.Book.Tests.Hostile;
using Sightglass.Book.Tests.Samples;
using Sightglass.Book.Tests.Sheets;

namespace Sightglass.Book.Tests.Docs;

/// <summary>For each code a line that the reader prints: from the verified lines, or made here where it takes a folder or a large text.</summary>
internal static class CodeExamples
{
    public static string? Of(string code)
    {
        IEnumerable<string> lines = code switch
        {
            "B001" => Folder(f => Path.Combine(f.Path, "none")),
            "B002" => Folder(f => f.Path),
            "B003" => Folder(f => WithFile(f, "big.yaml", new string('#', (8 << 20) + 1))),
            "B004" => Folder(WithBadByte),
            "B005" => Folder(WithLink),
            "B006" => Folder(f => WithFile(f, string.Concat(Enumerable.Repeat("d/", 20)) + "a.yaml", "")),
            "B007" => Folder(f => f.Path, locked: true),
            "B015" => Text("book: A\nplaces: [" + string.Concat(Enumerable.Repeat("1, ", 130_000)) + "]\n"),
            "B020" => Text("book: A\nitems:\n" + string.Concat(Enumerable.Range(0, 1_200).Select(i => $"  i{i}: {{ kind: x }}\n"))),
            "B021" => Text(ManyRoadNumbers()),
            "B085" => Folder(f => WithFile(f, "book.yaml", "book: A\nitems:\n  horn: { photo: photos/horn.jpg }\n")),
            "B110" => Folder(f => WithRecording(f, null)),
            "B111" => Folder(f => WithRecording(f, "When,V [mph]\n14:02:00,12\n")),
            "B112" => Folder(f => WithRecording(f, "Time,V [mph]\n14:02:00,12\n14:02:01,fast\n")),
            "B113" => Folder(f => WithRecording(f, "Time,V [mph]\n14:02:00,12\n14:01:00,12\n")),
            "B114" => Folder(f => WithRecording(f, "Time,V [mph]\n15:02:00,12\n15:02:10,12\n")),
            _ => GoldenDiagnosticsTests.Lines(code),
        };
        return lines.FirstOrDefault(l => l.Contains(code, StringComparison.Ordinal));
    }

    private static string[] Text(string text) => [.. SampleBook.Read(text).Found.Select(d => d.ToString())];

    private static string[] Folder(Func<TemporaryFolder, string> make, bool locked = false)
    {
        using TemporaryFolder folder = new();
        DiagnosticList found = [];
        using FileStream? held = locked ? new(folder.Write("book.yaml", "book: A\n"), FileMode.Open, FileAccess.ReadWrite, FileShare.None) : null;
        BookReader.Read(make(folder), TestKinds.Catalog, found);
        return [.. found.Select(d => d.ToString().Replace(folder.Path, "my-class", StringComparison.Ordinal))];
    }

    private static string WithFile(TemporaryFolder folder, string name, string text)
    {
        folder.Write(name, text);
        return folder.Path;
    }

    private static string WithBadByte(TemporaryFolder folder)
    {
        File.WriteAllBytes(Path.Combine(folder.Path, "book.yaml"), [.. "book: Gr"u8, 0xF6, .. "sse\n"u8]);
        return folder.Path;
    }

    private static string WithLink(TemporaryFolder folder)
    {
        WithFile(folder, "book.yaml", "book: A\n");
        File.CreateSymbolicLink(Path.Combine(folder.Path, "items.yaml"), "/etc/hostname");
        return folder.Path;
    }

    private static string WithRecording(TemporaryFolder folder, string? csv)
    {
        if (csv is not null)
        {
            folder.Write("recordings/a.csv", csv);
        }

        return WithFile(folder, "book.yaml", """
            book: A
            recordings:
              grade: { file: recordings/a.csv, time: Time, columns: [{ column: "V [mph]", sets: speed }] }
            situations:
              stop: { states: { recording: grade, from: "14:02:00", to: "14:03:00" } }

            """);
    }

    private static string ManyRoadNumbers() =>
        "book: A\nitems:\n" + string.Concat(Enumerable.Range(0, 1_000).Select(i => $"  i{i}: {{}}\n")) + "road numbers:\n"
        + string.Concat(Enumerable.Range(0, 300).Select(i => $"  '{i}': {{ modifications: [ {{ name: M, changes: {{ i1: {{ label: X }} }} }} ] }}\n"));
}
