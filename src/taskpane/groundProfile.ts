import { profileDrawing, type ProfileRoom } from "../drawing/profile";
import type { Reading } from "./reading";

/** Ground, dug surface and bed along the line, from the sheet Ground. */
export const groundProfile = {
  title: "Profile",
  places: ["Units", "FeatureName", "CutFill", "BedPoints"],
  draw: (read: Reading, room?: ProfileRoom): string =>
    profileDrawing(
      {
        system: read.system,
        name: read.text("FeatureName"),
        stations: read
          .grid("CutFill")
          .filter(([station]) => typeof station === "number")
          .map(([station, ground, surface]) => ({
            station: Number(station),
            ground: Number(ground),
            surface: Number(surface),
          })),
        bed: read.grid("BedPoints").map(([station, level]) => [Number(station), Number(level)] as const),
      },
      room,
    ),
};
