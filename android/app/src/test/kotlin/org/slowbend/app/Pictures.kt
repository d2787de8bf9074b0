package org.slowbend.app

import com.github.takahirom.roborazzi.RoborazziOptions

/** Pictures that are kept and compared: a quarter of the size, which still shows each word. */
val smallPicture = RoborazziOptions(recordOptions = RoborazziOptions.RecordOptions(resizeScale = 0.25))

/** Pictures of the README. */
val readmePicture = RoborazziOptions(recordOptions = RoborazziOptions.RecordOptions(resizeScale = 0.4))
