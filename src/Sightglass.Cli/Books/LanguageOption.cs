using System.Collections.Immutable;
using System.CommandLine;
using Sightglass.Basics.Diagnostics;
using Sightglass.Basics.Language;
using Sightglass.Book.Language;
using Sightglass.Book.Model;

namespace Sightglass.Cli.Books;

/// <summary>The language in which pages, papers, lessons and stories are; the terminal's own messages stay English.</summary>
internal static class LanguageOption
{
    private const string Name = "--language";

    public static Option<string?> Create() => new(Name)
    {
        Description = $"Language of pages, papers, lessons and stories: {string.Join(", ", Tongue.All.Select(t => t.Code))}. Messages of the terminal, and keys and names with --json, stay as they are.",
        HelpName = "CODE",
        Recursive = true,
    };

    /// <summary>Speaks the language that a call names; false, after saying why, where there is none of that name.</summary>
    public static bool Apply(ParseResult line, TextWriter error)
    {
        string? code = line.GetValue<string?>(Name);
        Tongue? tongue = code is null ? Tongue.English : Tongue.Find(code);
        if (tongue is null)
        {
            string[] known = [.. Tongue.All.Select(t => t.Code)];
            error.WriteLine($"There is no language `{code}`; {Nearest.DidYouMean(code!, known) ?? $"there are {string.Join(", ", known)}"}");
            return false;
        }

        tongue.SpeakHere();
        return true;
    }

    /// <summary>What the book says in other languages, read only where one of them is spoken; from now on that says the book's names too.</summary>
    public static ImmutableSortedDictionary<string, BookWords> Read(ClassBook book, string folder, DiagnosticList found)
    {
        if (Tongue.Spoken.Code == Tongue.English.Code)
        {
            return ImmutableSortedDictionary<string, BookWords>.Empty;
        }

        ClassBook whole = WordsReader.Into(book, folder, found);
        whole.TongueOf(Tongue.Spoken.Code).SpeakHere();
        return whole.Languages;
    }
}
