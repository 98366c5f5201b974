using Sightglass.Basics.Diagnostics;
using Sightglass.Book.Messages;
using Sightglass.Book.Model;

namespace Sightglass.Book.Checks;

/// <summary>Whether the pictures that a book names are there.</summary>
internal sealed class PhotoCheck(string folder)
{
    public void Run(ClassBook book, DiagnosticList found)
    {
        foreach (Item item in book.Items.Values.Where(i => i.Photo is not null))
        {
            Look(item.Photo!, item.Span, found);
        }

        foreach (Picture picture in book.Pictures.Values.Where(_ => book.RoadNumberInUse is null && book.TrainInUse is null))
        {
            Look(picture.File, picture.Span, found);
        }
    }

    private void Look(string file, Span span, DiagnosticList found)
    {
        FileInfo photo = new(Path.Combine(folder, file));
        if (!photo.Exists || photo.LinkTarget is not null)
        {
            found.Add(BookMessages.NoPhoto(span, file));
        }
    }
}
