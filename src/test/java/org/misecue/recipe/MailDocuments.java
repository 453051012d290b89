package org.misecue.recipe;

import java.nio.charset.Charset;
import java.nio.charset.StandardCharsets;
import java.util.Base64;
import java.util.stream.Collectors;

/** The oat slice in mails, as programs save them. */
final class MailDocuments {

    private static final String HEAD =
            "Received: from mx.example.org by box.example.org; Fri, 3 May 2024 10:00:00 +0000\r\n"
                    + "From: Sam Ashe <sam@example.org>\r\nTo: jo@example.org\r\nSubject: =?utf-8?Q?Re:_Plum_and_oat_slice?=\r\n"
                    + "Date: Fri, 3 May 2024 10:00:00 +0000\r\nMIME-Version: 1.0\r\n";

    private MailDocuments() {}

    /** The same words as text and as a page, letters coded one by one in the set that is named. */
    static byte[] alternatives(String charset) {
        Charset letters = Charset.forName(charset);
        return ascii(HEAD
                + "Content-Type: multipart/alternative;\r\n boundary=\"b1\"\r\n\r\nThis is a mail of parts.\r\n"
                + part("text/plain; charset=" + charset, "quoted-printable", coded(TextDocuments.text(), letters))
                + part("text/html; charset=" + charset, "quoted-printable", coded("<p>See the text.</p>", letters))
                + "--b1--\r\n");
    }

    /** Text in base64, a picture beside it that is no text. */
    static byte[] base64() {
        String text =
                Base64.getMimeEncoder().encodeToString(TextDocuments.text().getBytes(StandardCharsets.UTF_8));
        return ascii(HEAD + "Content-Type: multipart/mixed; boundary=b1\r\n\r\n"
                + part("text/plain; charset=utf-8", "base64", text)
                + part("image/png; name=\"slice.png\"", "base64", "iVBORw0KGgo=")
                + "--b1--\r\n");
    }

    /** Only a page, and a signature below it. */
    static byte[] page() {
        String page = "<html><body><div>Hi Jo,</div><p>" + OatSlice.MAKES
                + "</p><h2>Ingredients</h2><h3>For the base</h3><ul>"
                + OatSlice.BASE.stream().map(line -> "<li>" + line + "</li>").collect(Collectors.joining())
                + "</ul><h3>For the icing</h3><ul>"
                + OatSlice.ICING.stream().map(line -> "<li>" + line + "</li>").collect(Collectors.joining())
                + "</ul><h2>Method</h2><ol>"
                + OatSlice.STEPS.stream().map(line -> "<li>" + line + "</li>").collect(Collectors.joining())
                + "</ol><div>-- <br>Sam Ashe<br>12 Mill Lane</div></body></html>";
        return ascii(HEAD
                + "Content-Type: text/html; charset=iso-8859-1\r\nContent-Transfer-Encoding: quoted-printable\r\n\r\n"
                + coded(page.replace("–", "&ndash;"), StandardCharsets.ISO_8859_1));
    }

    /** Quoted, broken after 60 letters with a blank where the line goes on, and signed. */
    static byte[] flowed() {
        String flowed = ("Hi Jo,\n\n" + TextDocuments.text())
                .lines()
                .map(line -> String.join(" \n", OtherDocuments.wrapped(line, 60)))
                .flatMap(String::lines)
                .map(line -> "> " + line + "\r\n")
                .collect(Collectors.joining());
        return (HEAD
                        + "Content-Type: text/plain; charset=utf-8; format=flowed\r\nContent-Transfer-Encoding: 8bit\r\n\r\n"
                        + flowed + "-- \r\nSam Ashe\r\n12 Mill Lane\r\n")
                .getBytes(StandardCharsets.UTF_8);
    }

    /** Nothing but a document that was sent along. */
    static byte[] onlyAttachment() {
        return ascii(HEAD + "Content-Type: multipart/mixed; boundary=b1\r\n\r\n"
                + part("application/pdf; name=slice.pdf", "base64", "JVBERi0xLjQK") + "--b1--\r\n");
    }

    private static String part(String type, String encoding, String body) {
        return "--b1\r\nContent-Type: " + type + "\r\nContent-Transfer-Encoding: " + encoding + "\r\n\r\n" + body
                + "\r\n";
    }

    /** Quoted-printable (RFC 2045), its long lines broken softly. */
    private static String coded(String text, Charset letters) {
        StringBuilder coded = new StringBuilder();
        int column = 0;
        for (byte each : text.getBytes(letters)) {
            String sign = each == '\n'
                    ? "\r\n"
                    : each < 32 || each == '=' || each > 126 ? "=%02X".formatted(each & 0xFF) : "" + (char) each;
            if (column + sign.length() > 74 && each != '\n') {
                coded.append("=\r\n");
                column = 0;
            }
            coded.append(sign);
            column = each == '\n' ? 0 : column + sign.length();
        }
        return coded.toString();
    }

    private static byte[] ascii(String mail) {
        return mail.getBytes(StandardCharsets.US_ASCII);
    }
}
