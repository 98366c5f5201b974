using System.Collections.Immutable;
using System.Text;
using Microsoft.AspNetCore.Http;
using Sightglass.Basics.Language;
using Sightglass.Book.Model;
using Sightglass.Training.Drills;
using Sightglass.Web.Host;
using Sightglass.Web.Live;

namespace Sightglass.Web.Room.Trainee;

/// <summary>What things within reach look like: the book's pictures from where somebody stands. They show no state.</summary>
internal static class TraineePhotos
{
    private const int Most = 4;
    private const string Address = TraineePages.Root + "/photo";

    public static void Add(PieceMaker pieces, ClassBook book, Sight sight) =>
        pieces.Add("photos", "main", (book, sight.Place, new Listed<string>([.. sight.Items.Select(i => i.Name)])), static of => of.Place is { } place ? Section(of.book, place, of.Item3.All) : "");

    /// <summary>A picture, for who stands where it shows what is there; not found for anybody else.</summary>
    /// <param name="context">The question.</param>
    /// <param name="room">Who is where.</param>
    /// <param name="shelf">Has the file.</param>
    /// <param name="at">The place.</param>
    /// <param name="number">From 0, in the order of the page.</param>
    public static IResult Send(HttpContext context, TrainingRoom room, BookShelf shelf, string at, int number)
    {
        if (room.Find(context.Request.Cookies[TraineePages.Cookie]) is not { Drill: { Drill: { } drill, Last: { } look } } seat || seat.Person >= look.Sights.Length || look.Sights[seat.Person].Place != at)
        {
            return Results.NotFound();
        }

        Sight sight = look.Sights[seat.Person];
        return At(drill.Plan.Book, at, [.. sight.Items.Select(i => i.Name)]).ElementAtOrDefault(number) is { } picture ? Files.Photo(context, shelf, picture.File) : Results.NotFound();
    }

    private static ImmutableArray<Picture> At(ClassBook book, string place, ImmutableArray<string> things) =>
    [
        .. book.PicturesAt(place).Concat(things.SelectMany(t => book.PicturesOf(book.Items[t])).Where(p => p.Place is null || p.Place == place))
            .DistinctBy(p => p.File, StringComparer.Ordinal).Take(Most),
    ];

    private static string Section(ClassBook book, string place, ImmutableArray<string> things)
    {
        ImmutableArray<Picture> pictures = At(book, place, things);
        if (pictures.IsEmpty)
        {
            return "";
        }

        StringBuilder made = new();
        made.Append("<h2>").Append(Html.Encode(Say.It("What it looks like"))).Append("</h2><div>");
        foreach ((int i, Picture picture) in pictures.Index())
        {
            made.Append("<figure><div class=\"photo-frame\"><img loading=\"lazy\" src=\"").Append(Html.Encode(FormattableString.Invariant($"{Address}?at={Uri.EscapeDataString(place)}&number={i}"))).Append("\" alt=\"").Append(Html.Encode(Say.Book(picture.Shows))).Append("\">");
            foreach (PictureMark mark in picture.Marks.Where(m => things.Contains(m.Item)))
            {
                made.Append(FormattableString.Invariant($"<i class=\"p-frame p-{things.IndexOf(mark.Item)}\" style=\"left:{100 * mark.X:0.##}%;top:{100 * mark.Y:0.##}%;width:{100 * mark.Width:0.##}%;height:{100 * mark.Height:0.##}%\"></i>"));
            }

            made.Append("</div><figcaption class=\"small\">").Append(Html.Encode(Words.Capital(picture.Name))).Append(". ").Append(Html.Encode(Say.It("It does not show how things stand now."))).Append("</figcaption></figure>");
        }

        return made.Append("</div>").ToString();
    }
}
