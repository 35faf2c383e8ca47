/** The course: its rigs and tasks, read from files. Node only. */

export { type Complaint, checkCourse } from './check-course.ts';
export {
  type Agreement,
  agreementSchema,
  articleSchema,
  type LessonHead,
  lessonSchema,
  sourceSchema,
  wordSchema,
} from './content-schemas.ts';
export {
  COURSE_FILE,
  type Course,
  type CourseFile,
  type CourseReading,
  FOLDERS,
  type Holding,
  type Kind,
  parseCourse,
} from './course.ts';
export { readCourse, readCourseFiles } from './read-course.ts';
