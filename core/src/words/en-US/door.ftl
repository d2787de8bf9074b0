# What the one door says: of the disk, and of taking back.

act-undo = Undo
store-in-use = Another program is using this database. Close it, or give this one a folder of its own.
store-newer = A newer Slowbend wrote this database. Update this one; nothing was changed.
store-read-only = The folder or the database cannot be written. Change its permissions, or choose another folder. Nothing was recorded.
store-full = The disk is full. Make room, then do it again. Nothing was recorded.
store-damaged = The database is damaged. Start Slowbend again: it sets the file aside and keeps what can be read.
store-other = The database could not be used. Nothing was recorded; try again.
door-no-cook = That cook is not on this device. Go back to the start and choose one from the list.
door-no-meat = That meat is not on this device, or its adding was taken back. Go back to the cook.
door-no-answer = This answer cannot be read any more. Open the cook and do it there; nothing was recorded.
