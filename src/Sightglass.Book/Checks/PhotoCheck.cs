using Sightglass.Basics.Diagnostics;
using Sightglass.Book.Messages;
using Sightglass.Book.Model;

namespace Sightglass.Book.Checks;

/// <summary>Whether the pictures that items name are there.</summary>
internal sealed class PhotoCheck(string folder)
{
    public void Run(ClassBook book, DiagnosticList found)
    {
        foreach (Item item in book.Items.Values.Where(i => i.Photo is not null))
        {
            FileInfo photo = new(Path.Combine(folder, item.Photo!));
            if (!photo.Exists || photo.LinkTarget is not null)
            {
                found.Add(BookMessages.NoPhoto(item.Span, item.Photo!));
            }
        }
    }
}
