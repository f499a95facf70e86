import type { Content, TDocumentDefinitions } from "pdfmake/interfaces";
import { bullets, heading, paper, quiet, title } from "./look";

/** What stands for the company's own address until somebody says it. */
export const PLACEHOLDER = "https://your.server/rillwright";

/** Two pages for whoever runs the company's computers: from the zip to a first estimate, and to Excel for everybody. */
export function installGuide(version: string, base: string): TDocumentDefinitions {
  const open = base === PLACEHOLDER;
  return paper(
    "US",
    { title: "Rillwright: install guide", foot: `Rillwright ${version} · install guide`, draft: false, size: 10.5 },
    [
      title("Rillwright: install guide", 18),
      quiet(`Version ${version}. For whoever runs the company's computers: about half an hour.`),
      heading("What it is, and what it needs"),
      {
        text:
          "Rillwright estimates recirculating streams and waterfalls. It is a set of files for any static web server: no database, " +
          "no account, no service behind it. Everything is calculated on the user's own computer; nothing is sent anywhere.",
      },
      bullets([
        "A web server with https inside your network or outside: IIS, nginx, Apache, or a bucket of a cloud provider. About 20 MB.",
        "For the bench, a current Edge, Chrome, Firefox or Safari, and nothing else.",
        "For Excel: Microsoft 365 or Excel 2021 or later on Windows or Mac, or Excel on the web. Excel for iPad shows stored results but cannot run the functions.",
        "The pane in Excel loads Microsoft's own script from appsforoffice.microsoft.com; allow that address in the proxy.",
      ]),
      heading("1. Put the site on the server (10 minutes)"),
      numbered([
        "Copy the folder site, with all that is in it, to the server.",
        ...(open
          ? [
              `Open the two files site/manifest.xml and site/functions.json in a plain text editor and replace every\n${PLACEHOLDER}\nwith the address at which the folder is served, without a slash at its end. No other file holds an address.`,
            ]
          : [`This copy is made for ${base}: the folder must be served there.`]),
        "Let the server send .xlsx as application/vnd.openxmlformats-officedocument.spreadsheetml.sheet and .json as application/json, and Access-Control-Allow-Origin: * with functions.json.",
        "Have browsers ask again each time for files without a long code in their name (Cache-Control: no-cache), so that a new version arrives at once.",
      ]),
      heading("2. A first estimate, without Excel (5 minutes)"),
      numbered([
        `Open ${open ? "your address" : base}/bench.html in a browser. It opens with an invented demo job, calculated.`,
        "In the pane beside the sheets, on its tab Start, pick US or metric units and Blank, and press Open here. Answer the six questions at the top of the sheet Start, such as 14 ft, 3'2 and 30 in: a first price range appears, with what to measure next. Made-up prices come with the workbook and are marked; no quote can be signed while one is in it.",
        "Save .xlsx puts the workbook into the downloads. Work is kept in the browser too, and the page opens without a network once it has been visited.",
      ]),
      { ...(heading("3. Excel for one computer, to try (5 minutes)") as object), pageBreak: "before" } as Content,
      bullets([
        "Windows: share a folder that holds manifest.xml. In Excel: File, Options, Trust Center, Trust Center Settings, Trusted Add-in Catalogs; add the folder's network address, tick Show in Menu, restart Excel. Then Home, Add-ins, More Add-ins, Shared Folder, Rillwright.",
        "Mac: copy manifest.xml to ~/Library/Containers/com.microsoft.Excel/Data/Documents/wef and restart Excel. Then Home, Add-ins.",
        "Excel on the web: Home, Add-ins, More Settings, Upload My Add-in, manifest.xml.",
        "Then open workbooks/rillwright-us-demo.xlsx, and type =RILL. into a cell of a new sheet: the list of functions appears.",
      ]),
      heading("4. Excel for all colleagues (10 minutes)"),
      numbered([
        "Sign in to the Microsoft 365 admin center as an administrator and go to Settings, Integrated apps, Upload custom apps.",
        "Choose Office Add-in, then manifest.xml (from the folder site, with your address in it).",
        "Choose who gets it: yourself first, then a group, then everybody. It may take up to a day until the button shows on everybody's Home tab; a restart of Excel helps.",
        "Put the folder workbooks where colleagues start their jobs, read-only, so that a job begins as a copy.",
      ]),
      heading("5. A new version"),
      {
        text: "Replace the old folder site with the new one, with your address in the two files as before. Workbooks that are under way keep working; the manifest needs to be uploaded again only where its Version is a new one.",
      },
      heading("If something does not work"),
      bullets([
        "The bench stays empty: the server does not send all files, or sends .js as text. Open the browser's console (F12); it names the file.",
        "Excel does not show the add-in: the certificate must be trusted by the computer, and the address must open in its browser without a warning.",
        "Cells show #NAME?: the add-in is not installed for this user, or functions.json cannot be read. Results stored in the workbook still stand in a copy of values (pane, Job).",
        "A cell shows #VALUE!: point at its warning sign; a sentence says which argument is wrong and what would be right.",
      ]),
      heading("Removing it"),
      {
        text: "Remove the app in the admin center and delete the folder from the server. Workbooks remain what they are: files of the user's.",
      },
      {
        margin: [0, 10, 0, 0],
        text: "MIT license, no warranty; the licenses of what it is built from are in site/licences.txt. Rillwright is not affiliated with Microsoft or any maker of spreadsheets; Excel and Microsoft 365 are trademarks of Microsoft.",
        color: "#4f5d63",
        fontSize: 10,
      },
    ],
  );
}

function numbered(texts: readonly string[]): Content {
  return { ol: texts.map((text) => ({ text, margin: [0, 0.5, 0, 1.5] })) };
}
