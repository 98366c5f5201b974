using System.Text.Json;
using Sightglass.Basics.Language;
using Sightglass.Training.Routes;

namespace Sightglass.Paper;

/// <summary>What the scripts of a walk-down say, as data of its page: they know no language. A script fills the gaps.</summary>
internal static class WalkDownWords
{
    public static string Json() => JsonSerializer.Serialize(new Dictionary<string, string>(StringComparer.Ordinal)
    {
        // Who walks, and where.
        ["walkDown"] = Say.It("Walk-down"),
        ["purpose " + RouteRequest.Whole] = Say.Word(RouteRequest.Whole),
        ["purpose " + RouteRequest.Changes] = Say.Word(RouteRequest.Changes),
        ["lead"] = Say.It("{0}: {1} things at {2} places. What you find is kept on this phone and needs no network."),
        ["who"] = Say.It("Who walks"),
        ["roadNumber"] = Say.It("Road number of the machine"),
        ["notKnown"] = Say.It("not known yet"),
        ["begin"] = Say.It("Begin"),
        ["arrange"] = Say.It("To arrange before"),
        ["noStorage"] = Say.It("This phone gives this page no storage: hand in before you close it, or open it in another browser."),
        ["noWalkDown"] = Say.It("No walk-down"),
        ["noAnswer"] = Say.It("The computer does not answer."),
        ["places"] = Say.It("Places"),
        ["of"] = Say.It("{0} of {1}"),
        ["stop"] = Say.It("stop {0} of {1}"),
        ["metres"] = Say.It("{0} m from the stop before."),
        ["stand"] = Say.It("Stand clear of what can move. Look where you stand before you photograph, and not while you walk."),
        ["danger"] = Say.It("Danger"),
        ["warning"] = Say.It("Warning"),
        ["caution"] = Say.It("Caution"),
        ["notice"] = Say.It("Notice"),
        ["beforeTouch"] = Say.It("Before you touch:"),
        ["beforeGo"] = Say.It("Before you go there:"),

        // What is found.
        ["seen"] = Say.It("Seen"),
        ["notSeen"] = Say.It("Not seen"),
        ["differs"] = Say.It("Differs"),
        ["more"] = Say.It("Label, photo, note"),
        ["hasWay"] = Say.It("way open"),
        ["hasPhoto"] = Say.It("photo"),
        ["hasNote"] = Say.It("note"),
        ["hasVoice"] = Say.It("voice"),
        ["label"] = Say.It("Label as found"),
        ["way"] = Say.It("Which way is open"),
        ["wayHint"] = Say.It("such as: handle in line with the pipe"),
        ["note"] = Say.It("Note"),
        ["photoOf"] = Say.It("Photo of {0}"),
        ["asFound"] = Say.It("{0}, as found"),
        ["take"] = Say.It("Take a photo"),
        ["takeAgain"] = Say.It("Take it again"),
        ["small"] = Say.It("The photo is made small…"),
        ["noRoom"] = Say.It("The photo was not kept: there is no room on the phone. Hand in what there is, then take it again."),
        ["noPicture"] = Say.It("This is no picture that the phone can read. Take another one."),
        ["drawRound"] = Say.It("Draw round what you want to name. What people wear, faces and number plates: leave them out."),
        ["addMark"] = Say.It("Add a mark"),
        ["mark"] = Say.It("Mark: {0}. Press to name it."),
        ["markUnnamed"] = Say.It("Mark: without a name. Press to name it."),
        ["markAsks"] = Say.It("name?"),
        ["whatMarked"] = Say.It("What is marked?"),
        ["takeMarkAway"] = Say.It("Take the mark away"),
        ["name"] = Say.It("Name"),
        ["keep"] = Say.It("Keep"),
        ["record"] = Say.It("Record a voice note"),
        ["stopRecording"] = Say.It("Stop recording"),
        ["mayNotHear"] = Say.It("The phone does not let this page hear"),

        // What is kept and handed in.
        ["keeping"] = Say.It("Being kept…"),
        ["keptAll"] = Say.It("{0} of {1}, all kept on this phone"),
        ["keptOpen"] = Say.It("{0} of {1}, kept only while this page is open"),
        ["full"] = Say.It("Not kept: the phone has no room left. Hand in now, then make room."),
        ["refusedHere"] = Say.It("Not kept: the phone refused. Hand in now."),
        ["handIn"] = Say.It("Hand in"),
        ["counts"] = Say.It("{0} of {1} things: {2} differ, {3} not seen, {4} photos."),
        ["bring"] = Say.It("Save the result file, bring it to the computer, and there: sightglass walkdown --take FILE. Handing in twice does no harm. What you found stays on this phone."),
        ["save"] = Say.It("Save the result file"),
        ["give"] = Say.It("Give it to another program"),
        ["close"] = Say.It("Close"),
        ["noFile"] = Say.It("The file could not be made. Make room on the phone and try again; nothing is lost."),
        ["notPaired"] = Say.It("This phone is not paired: pair it again to hand in. Nothing is lost."),
        ["refused"] = Say.It("{0} refused: {1}"),
        ["tooLarge"] = Say.It("it is too large"),
        ["waitsNetwork"] = Say.It("{0} waits for the network"),
        ["waitNetwork"] = Say.It("{0} wait for the network"),
        ["waitsComputer"] = Say.It("{0} waits for the computer"),
        ["waitComputer"] = Say.It("{0} wait for the computer"),
        ["allHandedIn"] = Say.It("All handed in"),
        ["keepOpen"] = Say.It("Keep this page open: the phone will not open it again without a network."),
    });
}
