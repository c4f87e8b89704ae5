using System.Text;
using HandsFree.Pages.Html;

namespace HandsFree.Pages.Cards;

/// <summary>A card as a page of HTML: two sheets in large type, black on white.</summary>
public static class CardHtml
{
    private const string Foot = "Not a medical device. Licensed staff decide; policy and orders stand above. In an emergency use the call light.";

    /// <summary>The whole document.</summary>
    /// <param name="card">The content.</param>
    /// <param name="paper">On which it is printed.</param>
    public static string Write(Card card, Paper paper)
    {
        StringBuilder body = new();
        foreach (IReadOnlyList<CardPart> side in (IReadOnlyList<CardPart>[])[card.Front, card.Back])
        {
            body.Append($"<section class=\"card\">\n<h1>{Markup.Text(card.Title)}</h1>\n");
            foreach (CardPart part in side)
            {
                body.Append($"<h2>{Markup.Text(part.Heading)}</h2>\n<table class=\"words\">\n");
                foreach (CardLine line in part.Lines)
                {
                    body.Append($"<tr><th scope=\"row\">{Markup.Text(line.Say)}</th><td>{Markup.Text(line.Means)}</td></tr>\n");
                }

                body.Append("</table>\n");
            }

            body.Append("</section>\n");
        }

        return PageShell.Document(card.Title, paper, body.ToString(), Foot);
    }
}
