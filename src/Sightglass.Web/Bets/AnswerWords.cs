using System.Text.Json;
using Sightglass.Basics.Language;

namespace Sightglass.Web.Bets;

/// <summary>What the script of a phone's page says, as data of that page.</summary>
internal static class AnswerWords
{
    /// <summary>A letter of an answer goes into <c>{0}</c>, another one into <c>{1}</c>, what the bet teaches into the last gap.</summary>
    public static string Json() => JsonSerializer.Serialize(new Dictionary<string, string>(StringComparer.Ordinal)
    {
        ["nothing"] = Say.It("Nothing is asked at the moment."),
        ["think"] = Say.It("What do you think?"),
        ["said"] = Say.It("You say {0}. You may change it until it is run."),
        ["running"] = Say.It("It is running. Look at the wall."),
        ["came"] = Say.It("{0} came true. {1}"),
        ["cameAsSaid"] = Say.It("{0} came true, as you said. {1}"),
        ["cameUnlike"] = Say.It("{0} came true; you said {1}. {2}"),
        ["none"] = Say.It("No answer came true. {0}"),
        ["noneUnlike"] = Say.It("No answer came true; you said {0}. {1}"),
        ["lost"] = Say.It("No connection. Your answer will be sent when you touch it again."),
    });
}
