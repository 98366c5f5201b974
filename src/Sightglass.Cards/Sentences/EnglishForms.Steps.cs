namespace Sightglass.Cards.Sentences;

/// <summary>What steps say in English.</summary>
public static partial class EnglishForms
{
    private const FormHints Operates = FormHints.Action | FormHints.Control;

    private static IEnumerable<SentenceForm> Steps() => [.. Moves(), .. Operating(), .. Looking(), .. Saying(), .. Steering(), .. Protecting()];

    private static IEnumerable<SentenceForm> Moves() =>
    [
        new(Operation.Jump, FormPlace.Step, "Go to step {step}", "went on to step {step}", hints: FormHints.Leaves),
        new(Operation.JumpToEnd, FormPlace.Step, "Go to the end", "went to the end", hints: FormHints.Leaves),
        new(Operation.Go, FormPlace.Step, "Go to {place}", "went to {place}", hints: FormHints.Action),
        new(Operation.Go, FormPlace.Step, "Walk to {place}", hints: FormHints.Action),
        new(Operation.WalkFrom, FormPlace.Step, "Walk from {from:place} to {place}", hints: FormHints.Action),
        new(Operation.WalkFrom, FormPlace.Step, "Go from {from:place} to {place}", hints: FormHints.Action),
    ];

    private static IEnumerable<SentenceForm> Operating() =>
    [
        new(Operation.Open, FormPlace.Step, "Open {item}", "opened {item}", position: "open", hints: Operates),
        new(Operation.Close, FormPlace.Step, "Close {item}", "closed {item}", position: "closed", hints: Operates),
        new(Operation.Close, FormPlace.Step, "Shut {item}", position: "closed", hints: Operates),
        new(Operation.Turn, FormPlace.Step, "Turn {item} to {position}", "turned {item} to {position}", hints: Operates),
        new(Operation.Turn, FormPlace.Step, "Set {item} to {position}", hints: Operates),
        new(Operation.Turn, FormPlace.Step, "Move {item} to {position}", hints: Operates),
        new(Operation.TurnUntil, FormPlace.Step, "Turn {item} to {position} until {condition}[, at most {limit:time}]", hints: Operates | FormHints.Limited),
        new(Operation.TurnUntil, FormPlace.Step, "Set {item} to {position} until {condition}[, at most {limit:time}]", hints: Operates | FormHints.Limited),
        new(Operation.TurnUntil, FormPlace.Step, "Move {item} to {position} until {condition}[, at most {limit:time}]", hints: Operates | FormHints.Limited),
        new(Operation.TurnOn, FormPlace.Step, "Turn {item} on", "turned {item} on", position: "on", hints: Operates),
        new(Operation.TurnOn, FormPlace.Step, "Turn on {item}", position: "on", hints: Operates),
        new(Operation.TurnOff, FormPlace.Step, "Turn {item} off", "turned {item} off", position: "off", hints: Operates),
        new(Operation.TurnOff, FormPlace.Step, "Turn off {item}", position: "off", hints: Operates),
        new(Operation.Push, FormPlace.Step, "Push {item} once", "pushed {item}", position: "pushed", hints: Operates),
        new(Operation.Push, FormPlace.Step, "Press {item} once", position: "pushed", hints: Operates),
        new(Operation.Push, FormPlace.Step, "Push {item}", position: "pushed", hints: Operates),
        new(Operation.Push, FormPlace.Step, "Press {item}", position: "pushed", hints: Operates),
        new(Operation.Start, FormPlace.Step, "Start {item}", "started {item}", position: "running", hints: Operates),
        new(Operation.StopMachine, FormPlace.Step, "Stop {item}", "stopped {item}", position: "stopped", hints: Operates),
        new(Operation.Hold, FormPlace.Step, "Hold {item} at {position} for {limit:time}", "held {item} at {position} for {limit}", hints: Operates),
        new(Operation.HoldUntil, FormPlace.Step, "Hold {item} at {position} until {condition}[, at most {limit:time}]", "held {item} at {position} until {condition}",
            "held {item} at {position} for {limit}, and it did not come to be that {condition}", hints: Operates | FormHints.Limited),
        new(Operation.Connect, FormPlace.Step, "Connect {item} to {other:item}", "connected {item} to {other}", position: "connected", hints: Operates),
        new(Operation.Disconnect, FormPlace.Step, "Disconnect {item}", "disconnected {item}", position: "disconnected", hints: Operates),
    ];

    private static IEnumerable<SentenceForm> Looking() =>
    [
        new(Operation.Check, FormPlace.Step, "Check that {condition}", "checked, and it was so: {condition}", "checked, and it was not so: {condition}", hints: FormHints.Looks),
        new(Operation.Check, FormPlace.Step, "Make sure that {condition}", hints: FormHints.Looks),
        new(Operation.LookWhether, FormPlace.Step, "Look whether {sign}", "looked, and {sign}", "looked, and it was not so: {sign}", hints: FormHints.Looks),
        new(Operation.Look, FormPlace.Step, "Look for {sign}", "looked, and {sign}", "looked, and it was not so: {sign}", hints: FormHints.Looks),
        new(Operation.LookAt, FormPlace.Step, "Look for {sign} at {place}", "looked at {place}, and {sign}", "looked at {place}, and it was not so: {sign}", hints: FormHints.Looks),
        new(Operation.Read, FormPlace.Step, "Read {item} as {letter:name}", "read {item}", hints: FormHints.Looks),
        new(Operation.Wait, FormPlace.Step, "Wait {limit:time}", "waited {limit}", hints: FormHints.Action),
        new(Operation.Wait, FormPlace.Step, "Wait for {limit:time}", hints: FormHints.Action),
        new(Operation.WaitUntil, FormPlace.Step, "Wait until {condition}[, at most {limit:time}]", "waited until {condition}", "waited {limit}, and it did not come to be that {condition}",
            hints: FormHints.Looks | FormHints.Limited | FormHints.Action),
    ];

    private static IEnumerable<SentenceForm> Saying() =>
    [
        new(Operation.Tell, FormPlace.Step, "Tell {roles}: {text}", "told {roles}: {text}", hints: FormHints.Action),
        new(Operation.AskPermission, FormPlace.Step, "Ask {role} for permission to operate {item}", "asked {role} for permission to operate {item}, and got it",
            "asked {role} for permission to operate {item}, and did not get it", hints: FormHints.Action | FormHints.Limited),
        new(Operation.AskProtection, FormPlace.Step, "Ask {role} for {protection}", "asked {role} for protection ({protection}), and got it",
            "asked {role} for protection ({protection}), and did not get it", hints: FormHints.Action | FormHints.Limited),
        new(Operation.AskRequest, FormPlace.Step, "Ask {role} to {request:action}", "asked {role} to {request}, and heard that it was done", "asked {role} to {request}, and {answer}",
            hints: FormHints.Action | FormHints.Limited),
        new(Operation.GiveBack, FormPlace.Step, "Give back {protection}", "gave back protection ({protection})", hints: FormHints.Action),
    ];

    private static IEnumerable<SentenceForm> Steering() =>
    [
        new(Operation.If, FormPlace.Step, "If {condition}, {action}", "saw that {condition}", "saw that it was not so: {condition}", hints: FormHints.Looks),
        new(Operation.If, FormPlace.Step, "If {condition} {action}", hints: FormHints.Looks),
        new(Operation.When, FormPlace.Step, "When {condition}, {action}"),
        new(Operation.AnyOrder, FormPlace.Step, "In any order:[ {actions}]"),
        new(Operation.OneOf, FormPlace.Step, "Do one of:[ {actions}]"),
        new(Operation.SameTime, FormPlace.Step, "At the same time:[ {actions}]"),
        new(Operation.Repeat, FormPlace.Step, "Repeat steps {first:step} to {last:step} until {condition}[, at most {count} times][, every {period:time}]",
            "were done with steps {first} to {last}: {condition}", "went back to step {first}, as it was not so: {condition}", hints: FormHints.Looks | FormHints.Limited),
        new(Operation.Repeat, FormPlace.Step, "Repeat step {first:step} until {condition}[, at most {count} times][, every {period:time}]", "were done with step {first}: {condition}",
            "went back to step {first}, as it was not so: {condition}", hints: FormHints.Looks | FormHints.Limited),
        new(Operation.DoCard, FormPlace.Step, "Do card \"{title:words}\"", "took the card \"{title}\"", hints: FormHints.Action),
        new(Operation.DoCard, FormPlace.Step, "Do card \"{title:words}\" with {letter:name} = {word:words}", "took the card \"{title}\" with {letter} = {word}", hints: FormHints.Action),
        new(Operation.DoCard, FormPlace.Step, "Do card \"{title:words}\" with {word:words}", hints: FormHints.Action),
        new(Operation.ForEach, FormPlace.Step, "For each {noun} from {first:words} to {last:words}:[ {actions}]"),
        new(Operation.ForEach, FormPlace.Step, "For each {noun:words} out of {domain:texts}:[ {actions}]"),
        new(Operation.ForEach, FormPlace.Step, "For each {noun}:[ {actions}]"),
        new(Operation.ForEach, FormPlace.Step, "For each {noun} of the train:[ {actions}]"),
        new(Operation.NextRound, FormPlace.Step, "Go on with the next {noun:words}", "went on with the next {noun}", hints: FormHints.Leaves),
        new(Operation.Stop, FormPlace.Step, "Stop[, and tell {roles}][: {text}]", "stopped there", hints: FormHints.Leaves),
    ];

    private static IEnumerable<SentenceForm> Protecting() =>
    [
        new(Operation.LockAndTag, FormPlace.Step, "Lock and tag {item}", "locked and tagged {item}", hints: FormHints.Action),
        new(Operation.Unlock, FormPlace.Step, "Remove the lock and tag from {item}", "removed the lock and tag from {item}", hints: FormHints.Action),
        new(Operation.Chock, FormPlace.Step, "Chock {item}", "chocked {item}", hints: FormHints.Action),
        new(Operation.Unchock, FormPlace.Step, "Remove the chock from {item}", "removed the chock from {item}", hints: FormHints.Action),
        new(Operation.SetProtection, FormPlace.Step, "Set {protection} at {place}", "set {protection} at {place}", hints: FormHints.Action),
        new(Operation.RemoveProtection, FormPlace.Step, "Remove {protection} at {place}", "removed {protection} at {place}", hints: FormHints.Action),
    ];
}
