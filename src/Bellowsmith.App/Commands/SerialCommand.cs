using System.CommandLine;
using System.Globalization;
using Bellowsmith.App.Terminal;
using Bellowsmith.Kits.Answers;
using Bellowsmith.Quality.Serials;

namespace Bellowsmith.App.Commands;

internal static class SerialCommand
{
    public const string Example =
        """
        bellowsmith serial new --date 2027-01-01 --number 42
        answers 26W5300042U: that Friday lies in week 53 of 2026; U is the check character.
        bellowsmith serial check 26W53-00024U
        answers that it does not check and names the likely slip. Exit code 0: that is an answer too.
        """;

    public static Command Create() => new("serial", "What is the next part's serial number, and is one read off a part right?") { New(), Check() };

    private static Command New()
    {
        Command command = new("new", "Make a serial: prefix, week-year, W, week, mark, number of five digits, check character.");
        Option<DateOnly> date = new("--date")
        {
            Required = true,
            HelpName = "yyyy-MM-dd",
            Description = "The day it is made; week and week-year are ISO 8601's.",
            CustomParser = result =>
            {
                if (DateOnly.TryParseExact(result.Tokens[0].Value, "yyyy-MM-dd", CultureInfo.InvariantCulture, DateTimeStyles.None, out DateOnly day)
                    && SerialWeek.Of(day).Exists) return day;
                result.AddError($"--date \"{result.Tokens[0].Value}\" is not a day of this century: write year, month and day, for example 2027-01-01.");
                return default;
            },
        };
        Option<int> number = new("--number") { Required = true, HelpName = "number", Description = "The running number, 1 to 99999." };
        Option<string> prefix = Letters("--prefix", "Digits or letters before it, such as the workshop's", SerialNumber.LongestPrefix, char.IsAsciiLetterOrDigit);
        Option<string> mark = Letters("--mark", "Letters between week and number, such as the product's", SerialNumber.LongestMark, char.IsAsciiLetter);
        Option<bool> json = Json();
        number.Validators.Add(result =>
        {
            if (result.Tokens.Count > 0 && int.TryParse(result.Tokens[0].Value, NumberStyles.Integer, CultureInfo.InvariantCulture, out int n) && n is < 1 or > SerialNumber.GreatestNumber)
                result.AddError($"--number must lie between 1 and {SerialNumber.GreatestNumber}.");
        });
        foreach (Option option in (Option[])[date, number, prefix, mark, json]) command.Add(option);
        command.SetAction(parsed =>
        {
            SerialNumber serial = SerialNumber.New(
                parsed.GetValue(prefix)!.ToUpperInvariant(), parsed.GetValue(date), parsed.GetValue(number), parsed.GetValue(mark)!.ToUpperInvariant());
            return Answer(SerialCheck.Of(serial.ToString()), parsed.GetValue(json));
        });
        return command;
    }

    private static Command Check()
    {
        Command command = new("check", "Check a serial read off a part: small letters, blanks and hyphens are understood. Exit code 0 also where it is not valid.");
        Argument<string[]> text = new("TEXT") { Description = "The serial as it is read.", Arity = ArgumentArity.OneOrMore };
        Option<bool> json = Json();
        command.Add(text);
        command.Add(json);
        command.SetAction(parsed => Answer(SerialCheck.Of(string.Concat(parsed.GetRequiredValue(text))), parsed.GetValue(json)));
        return command;
    }

    private static int Answer(SerialCheck check, bool json)
    {
        if (json) Console.WriteLine(AnswerJson.Write(SerialAnswer.Of(check)));
        else SerialView.Show(Screen.Output(), check);
        return Study.Answered;
    }

    private static Option<bool> Json() => new("--json") { Description = "Print one JSON object and nothing else." };

    private static Option<string> Letters(string name, string description, int longest, Func<char, bool> allowed)
    {
        Option<string> option = new(name) { Description = $"{description}, up to {longest}.", HelpName = "text", DefaultValueFactory = _ => "" };
        option.Validators.Add(result =>
        {
            string text = result.Tokens.Count > 0 ? result.Tokens[0].Value : "";
            if (text.Length > longest || !text.All(allowed)) result.AddError($"{name} \"{text}\" cannot stand in a serial: {description.ToLowerInvariant()}, up to {longest}.");
        });
        return option;
    }
}
