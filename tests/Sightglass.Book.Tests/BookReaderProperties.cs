using System.Text;
using CsCheck;
using Sightglass.Basics.Diagnostics;
using Sightglass.Book.Model;
using Sightglass.Book.Tests.Samples;

namespace Sightglass.Book.Tests;

public class BookReaderProperties
{
    private const string Signs = "{}[]:,-#&*!|>'\"%@`\n \t?0a~.\\<=é\u2028\0\uD800";

    /// <summary>Where in the text (a share of its length), how many characters to take out, what to put in.</summary>
    private static readonly Gen<(double At, int Out, string In)> s_edit =
        Gen.Select(Gen.Double[0, 1], Gen.Int[0, 30], Gen.Char[Signs].Array[0, 3].Select(c => new string(c)), (at, take, put) => (at, take, put));

    [Fact]
    public void Read_AnyEdits_GiveABookOrErrorsWithPlacesInTheText() => s_edit.Array[1, 10].Holds(
        edits =>
        {
            string text = Edited(edits);
            (ClassBook? book, DiagnosticList found) = SampleBook.Read(text);
            return book is not null == !found.HasErrors && found.All(d => d.Span.Start >= 0 && d.Span.End <= text.Length && d.ToString().Length > 0);
        },
        iter: 300);

    [Fact]
    public void For_AnyGoodEdits_NeverThrows() => s_edit.Array[1, 2].Holds(
        edits =>
        {
            ClassBook? book = SampleBook.Read(Edited(edits)).Book;
            return book is null || book.RoadNumbers.Keys.All(n => book.For(n).RoadNumberInUse == n);
        },
        iter: 200);

    private static string Edited((double At, int Out, string In)[] edits)
    {
        StringBuilder text = new(SampleBook.Text);
        foreach ((double at, int take, string put) in edits)
        {
            int start = (int)(at * text.Length);
            text.Remove(start, Math.Min(take, text.Length - start)).Insert(start, put);
        }

        return text.ToString();
    }
}
