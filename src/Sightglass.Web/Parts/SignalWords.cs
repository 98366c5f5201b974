using Sightglass.Basics.Language;
using Sightglass.Book.Model;

namespace Sightglass.Web.Parts;

/// <summary>Signal words as people read them.</summary>
internal static class SignalWords
{
    public static string Of(SignalWord word) => word switch
    {
        SignalWord.Danger => Say.It("Danger"),
        SignalWord.Warning => Say.It("Warning"),
        SignalWord.Caution => Say.It("Caution"),
        _ => Say.It("Notice"),
    };
}
